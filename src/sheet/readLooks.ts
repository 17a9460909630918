import { changeRangeOf } from "../domain/day/changeRangeOf";
import type { Look } from "../domain/day/look";
import { sayLook } from "../domain/day/sayLook";
import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import type { Problem } from "../domain/problem";
import { succeed } from "../domain/succeed";
import { lookKey } from "./lookKey";
import { nameKey } from "./nameKey";
import { readAfter } from "./readAfter";
import { readDate } from "./readDate";
import { readFixed } from "./readFixed";
import { readFlag } from "./readFlag";
import { readMinutes } from "./readMinutes";
import { readNumber } from "./readNumber";
import { readPieceNumbers } from "./readPieceNumbers";
import { readScalar } from "./readScalar";
import { readTalents } from "./readTalents";
import { readText } from "./readText";
import { readTimeOfDay } from "./readTimeOfDay";
import { readWhere } from "./readWhere";
import type { Table } from "./table";

/**
 * The looks of a table, in the order of the sheet.
 *
 * Some hosts send a blank cell as 0, so a 0 is blank everywhere but in durations, where blank counts 0 too.
 * Change blank or 0 falls back on Likely, and Likely on Change. "Make-up first" is yes unless the cell says no. Spellings of one talent
 * or piece number that share a nameKey become the first of them. Rows without a look, a talent and a duration are passed over.
 * Pieces that are all bare numbers, one a cell, are counts and name none.
 * The first cell that cannot be read is the problem, named by its column and its look; a row that has
 * something but no look number is argument-missing.
 */
export function readLooks(table: Table): Outcome<readonly Look[]> {
  const spellings = { talents: new Map<string, string>(), pieces: new Map<string, string>() };
  const looks: Look[] = [];
  for (const row of table.dataRows) {
    const look = readLook(table, row, spellings);
    if (!look.ok) return look;
    if (look.value !== null) looks.push(look.value);
  }
  // Where no cell of Pieces lists two, a bare number says how many pieces a look has.
  if (looks.some(({ pieces }) => pieces.length > 1)) return succeed(looks);
  return succeed(looks.map((look) => ({ ...look, pieces: look.pieces.filter((piece) => /\D/.test(piece)) })));
}

interface Spellings {
  readonly talents: Map<string, string>;
  readonly pieces: Map<string, string>;
}

function readLook(table: Table, row: number, spellings: Spellings): Outcome<Look | null> {
  let problem: Problem | null = null;
  let by = `row ${row + 1}`;

  function cell<T>(field: string, reader: (raw: unknown, argument: string) => Outcome<T | null>): Outcome<T | null> {
    const column = table.columnOf[field];
    if (column === undefined) return succeed(null);
    const argument = `${table.headings[column]!.trim()} of ${by}`;
    const raw = table.cells[row]![column];
    const scalar = readScalar(raw, argument);
    if (!scalar.ok) return scalar;
    return scalar.value === null || scalar.value === 0 ? succeed(null) : reader(raw, argument);
  }

  function read<T>(field: string, reader: (raw: unknown, argument: string) => Outcome<T | null>): T | null {
    if (problem !== null) return null;
    const outcome = cell(field, reader);
    if (outcome.ok) return outcome.value;
    problem = outcome.problem;
    return null;
  }

  const typed = read("look", readScalar);
  const label = typeof typed === "number" ? typed : typed === null ? null : String(typed);
  if (label !== null) by = sayLook(label);
  const talentText = read("talent", readText) ?? "";
  const likelyMinutes = read("likely", readMinutes);
  const changeMinutes = read("change", readMinutes) ?? likelyMinutes ?? 0;
  const low = cell("low", readMinutes);
  const high = cell("high", readMinutes);
  const hairMakeupMinutes = read("hairMakeup", readMinutes) ?? 0;
  const shootingMinutes = read("shooting", readMinutes) ?? 0;
  const set = read("set", readText);
  const look: Look = {
    key: lookKey(String(label ?? "")),
    label: label ?? "",
    talents: unified(readTalents(talentText), spellings.talents),
    talentText,
    order: read("order", readNumber),
    date: read("date", readDate),
    set: set === null ? null : nameKey(set) || set,
    where: read("where", readWhere),
    pieces: unified(readPieceNumbers(read("pieces", readText) ?? ""), spellings.pieces),
    changeMinutes,
    changeRange: !low.ok
      ? low.problem
      : !high.ok
        ? high.problem
        : changeRangeOf(low.value, likelyMinutes ?? changeMinutes, high.value, by),
    hairMakeupMinutes,
    shootingMinutes,
    makeupFirst: read("makeupFirst", readFlag) ?? true,
    arrivesAt: read("arrives", readTimeOfDay),
    shotAt: read("shotAt", readTimeOfDay),
    after: readAfter(read("after", readText) ?? ""),
    fixed: read("fixed", readFixed),
  };
  if (problem !== null) return { ok: false, problem };
  if (label !== null) return succeed(look);
  if (talentText === "" && changeMinutes === 0 && hairMakeupMinutes === 0 && shootingMinutes === 0)
    return succeed(null);
  return fail("argument-missing", { argument: `Look of ${by}`, expected: "the look's number" });
}

function unified(names: readonly string[], spellings: Map<string, string>): readonly string[] {
  const each = names.map((name) => {
    const key = nameKey(name) || name;
    const known = spellings.get(key);
    if (known === undefined) spellings.set(key, name);
    return known ?? name;
  });
  return [...new Set(each)];
}
