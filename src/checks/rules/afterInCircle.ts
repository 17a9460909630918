import { lookCircle } from "../../domain/day/lookCircle";
import { lookKey } from "../../sheet/lookKey";
import { readAfter } from "../../sheet/readAfter";
import type { CheckedRow } from "../checkedRow";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { lookName } from "../lookName";
import { textIn } from "../textIn";

interface FollowingLook {
  readonly key: string;
  readonly name: string;
  readonly after: readonly string[];
  readonly row: CheckedRow;
}

/** Each circle once, at the first of its looks on the sheet; whether the order keeps After is for another rule. */
export const afterInCircle = defineRule({
  id: "afterInCircle",
  about: "Looks that must each come after the other.",
  why: "No order keeps them all, so the day cannot be planned.",
  severity: "error",
  fixable: false,
  scope: "table",
  tables: ["looks"],
  needs: ["look", "after"],
  messages: {
    circle: "These looks wait for each other: {{looks}}. Take one of them out of After.",
  },
  check(table, report) {
    for (const ofDay of looksOfDays(table.dataRows.map((row) => ({ table, row })))) {
      let looks: readonly FollowingLook[] = ofDay;
      for (let circle = lookCircle(looks); circle !== null; circle = lookCircle(looks)) {
        const [first] = circle;
        const said = circle.map(({ name }) => name).join(" after ");
        report({ row: first!.row, field: "after", messageId: "circle", data: { looks: said } });
        // With its first look free the circle is open, and the next can be found.
        looks = looks.map((look) => (look.key === first!.key ? { ...look, after: [] } : look));
      }
    }
  },
});

function looksOfDays(rows: readonly CheckedRow[]): Iterable<readonly FollowingLook[]> {
  const byDay = new Map<number | null, FollowingLook[]>();
  for (const row of rows) {
    const name = textIn(row, "look");
    const key = name === null ? "" : lookKey(name);
    if (name === null || key === "") continue;
    const look = { key, name: lookName(name), after: readAfter(textIn(row, "after") ?? ""), row };
    const ofDay = byDay.get(dayIn(row, "date"));
    if (ofDay === undefined) byDay.set(dayIn(row, "date"), [look]);
    else ofDay.push(look);
  }
  return byDay.values();
}
