import type { LookChanges } from "../domain/day/day";
import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { lookKey } from "./lookKey";
import { readMinutes } from "./readMinutes";
import { readText } from "./readText";

const EXPECTED = "a table of minutes whose first row and first column are the look numbers";

/**
 * Minutes of change from look to look: the row's look is taken off, the column's put on. null, or cells that are all blank, is no table.
 *
 * Row and column headings name the same looks, in any order; the corner may hold anything. A blank pair is left out,
 * 0 is 0. Problems: argument-not-usable for headings that repeat or differ and for a figure that is no minutes;
 * error-in-cell.
 */
export function readChanges(cells: readonly (readonly unknown[])[] | null): Outcome<LookChanges> {
  const changes = new Map<string, Map<string, number>>();
  if (cells === null || cells.every((row) => row.every(isBlank))) return succeed(changes);
  const across = readHeadings(cells[0] ?? []);
  if (!across.ok) return across;
  const down = readHeadings(cells.map((row) => row[0]));
  if (!down.ok) return down;
  const keysAcross = new Map(across.value.map(({ key, at }) => [key, at]));
  const odd =
    down.value.find(({ key }) => !keysAcross.has(key)) ??
    across.value.find(({ key }) => !down.value.some((heading) => heading.key === key));
  if (odd !== undefined || down.value.length === 0) {
    return fail("argument-not-usable", { argument: "changes", given: odd?.typed ?? "", expected: EXPECTED });
  }
  for (const from of down.value) {
    const minutesTo = new Map<string, number>();
    for (const to of across.value) {
      const argument = `changes from ${from.typed} to ${to.typed}`;
      const minutes = readMinutes(cells[from.at]![to.at], argument);
      if (!minutes.ok) return minutes;
      if (minutes.value !== null && from.key !== to.key) minutesTo.set(to.key, minutes.value);
    }
    changes.set(from.key, minutesTo);
  }
  return succeed(changes);
}

function isBlank(raw: unknown): boolean {
  return raw === null || raw === undefined || raw === 0 || (typeof raw === "string" && raw.trim() === "");
}

interface Heading {
  readonly key: string;
  readonly typed: string;
  readonly at: number;
}

/** The look numbers of a row or column of headings, without its corner; blanks (0 on some hosts) are passed over. */
function readHeadings(cells: readonly unknown[]): Outcome<readonly Heading[]> {
  const headings: Heading[] = [];
  for (let at = 1; at < cells.length; at++) {
    const text = readText(cells[at], "changes");
    if (!text.ok) return text;
    if (text.value === null || text.value === "0") continue;
    const key = lookKey(text.value);
    if (headings.some((heading) => heading.key === key)) {
      return fail("argument-not-usable", { argument: "changes", given: text.value, expected: EXPECTED });
    }
    headings.push({ key, typed: text.value, at });
  }
  return succeed(headings);
}
