import type { Look } from "../domain/day/look";
import type { NeededPiece } from "../domain/day/neededPiece";
import { isProblem } from "../domain/isProblem";
import { isOwnKit } from "./isOwnKit";
import { looksNamed } from "./looksNamed";
import { nameKey } from "./nameKey";
import { readPieces } from "./readPieces";
import type { Table } from "./table";

/** The pieces of a table that looks need: those their Look cell names, and those that list the piece's number in their own Pieces. Those whose Look cannot be read are among them. */
export function readNeededPieces(table: Table, looks: readonly Look[]): readonly NeededPiece[] {
  const listed = new Set(looks.map(({ key }) => key));
  const pieces = readPieces(table);
  const lookOfPiece = new Map<string, { name: string; key: string }[]>();
  for (const { pieces: numbers, label, key } of looks) {
    for (const number of numbers) {
      const named = { name: String(label), key };
      const known = lookOfPiece.get(nameKey(number));
      if (known === undefined) lookOfPiece.set(nameKey(number), [named]);
      else known.push(named);
    }
  }
  return Array.from({ length: pieces.count }, (_, index): NeededPiece => {
    const row = pieces.at(index);
    const cell = typeof row.look === "string" ? looksNamed(row.look, listed) : [];
    const own = typeof row.piece === "string" ? (lookOfPiece.get(nameKey(row.piece)) ?? []) : [];
    const byKey = new Map([...cell, ...own].map((named) => [named.key, named]));
    const lender = row.lender;
    const isBorrowed = lender === null || isProblem(lender) || !isOwnKit(lender);
    return { row, looks: [...byKey.values()], isBorrowed };
  }).filter(({ row, looks: needing }) => needing.length > 0 || isProblem(row.look));
}
