import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { garmentKey } from "./garmentKey";
import { readMinutes } from "./readMinutes";
import { readText } from "./readText";

/**
 * Minutes for each kind of garment, from two columns, kind and minutes; keys as garmentKey gives them. null is none.
 *
 * A first row of headings and rows without a kind are passed over. Problems: argument-not-usable for a kind that
 * stands twice with different minutes and for what is no minutes; argument-missing for a kind without minutes;
 * error-in-cell.
 */
export function readMinutesByKind(cells: readonly (readonly unknown[])[] | null): Outcome<ReadonlyMap<string, number>> {
  const minutesByKind = new Map<string, number>();
  for (const [row, pair] of (cells ?? []).entries()) {
    const kind = readText(pair[0], "minutesByKind");
    if (!kind.ok) return kind;
    if (kind.value === null || kind.value === "0") continue;
    const argument = `minutesByKind, ${showGiven(kind.value)}`;
    const minutes = readMinutes(pair[1], argument);
    const { kind: key, known } = garmentKey(kind.value);
    if (!minutes.ok) {
      const isHeading = row === 0 && !known && typeof pair[1] === "string" && !/\d/.test(pair[1]);
      if (isHeading) continue;
      return minutes;
    }
    if (minutes.value === null) return fail("argument-missing", { argument, expected: "its minutes, such as 2" });
    if ((minutesByKind.get(key) ?? minutes.value) !== minutes.value) {
      const expected = `one figure, since "${showGiven(kind.value)}" stands for a kind that has ${minutesByKind.get(key)}`;
      return fail("argument-not-usable", { argument, given: showGiven(minutes.value), expected });
    }
    minutesByKind.set(key, minutes.value);
  }
  return succeed(minutesByKind);
}
