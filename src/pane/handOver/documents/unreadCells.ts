import { isProblem } from "../../../domain/isProblem";
import { returnDay } from "../../../domain/loans/returnDay";
import { valueHeld } from "../../../domain/value/valueHeld";
import { untoldLine } from "../../today/untoldLine";
import type { HeldPiece } from "./heldPieces";

/** A sentence for each held piece whose due day or value cannot be read, so that no blank on paper passes for none. */
export function unreadCells(held: readonly HeldPiece[], of: readonly ("due" | "value")[]): readonly string[] {
  return held.flatMap(({ table, row, quantity }) =>
    of.flatMap((what) => {
      const problem = what === "due" ? returnDay(row) : valueHeld(row, quantity);
      if (!isProblem(problem)) return [];
      const { name, sentence } = untoldLine(table, row, problem);
      return [`${name} stands without its ${what === "due" ? "due day" : "value"}: ${sentence}`];
    }),
  );
}
