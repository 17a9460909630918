import sample from "../../../src/build/sample/two-day-shoot.json";
import { looksInOrder } from "../../../src/domain/day/looksInOrder";
import { workOfDay } from "../../../src/domain/day/workOfDay";
import { scheduledDay } from "../../../src/domain/plan/scheduledDay";
import { dayfit } from "../../../src/functions/bindings/dayfit";
import { dayplan } from "../../../src/functions/bindings/dayplan";
import { dayArguments } from "../../../src/functions/dayArguments";
import { minuteByMinute } from "../../domain/plan/minuteByMinute";

const dateColumn = sample.lookHeadings.indexOf("Date");
const days = sample.days.map((day) => ({
  ...day,
  looks: [sample.lookHeadings, ...sample.looks.filter((look) => look[dateColumn] === day.date)] as unknown[][],
}));
const minutes = (clock: unknown): number => Math.round(Number(clock) * 86400) / 60;

describe.each(days)("$sheet of the sample workbook", ({ looks, call, wrap }) => {
  const rows = dayplan(looks, call, sample.people).slice(1);

  test("is shot when the day lived through minute by minute says", () => {
    const day = dayArguments(looks, call, sample.people, null, null);
    if (!day.ok) throw new Error(JSON.stringify(day.problem));
    const inOrder = looksInOrder(day.value.looks, 8 * 3600);
    const work = workOfDay(day.value, inOrder);
    const order = inOrder.map((_, index) => index);
    const lived = minuteByMinute(work, order, scheduledDay(work, order).meal);
    expect(rows.map((row) => [row[0], minutes(row[4]), minutes(row[5])])).toEqual(
      inOrder.map((look, index) => [
        look.label,
        lived.fromSeconds[index * 3 + 2]! / 60,
        lived.untilSeconds[index * 3 + 2]! / 60,
      ]),
    );
  });

  test("DAYFIT is wrap less the end of the last shot in DAYPLAN", () => {
    const [hours, past] = wrap.split(":").map(Number) as [number, number];
    const lastUntil = Math.max(...rows.map((row) => minutes(row[5])));
    expect(dayfit(looks, call, wrap, sample.people)).toBe(hours * 60 + past - lastUntil);
  });

  test("Spare is the minutes from Ready by to Shoot from", () => {
    for (const row of rows) expect(row[7]).toBe(minutes(row[4]) - minutes(row[3]));
  });
});

test("both days at once are refused", () => {
  const looks = [sample.lookHeadings, ...sample.looks] as unknown[][];
  expect(() => dayplan(looks, "08:00")).toThrow("looks holds rows of 2026-03-30 and of 2026-03-31; filter one day.");
});

test("with a heading row alone the plan is its heading row alone", () => {
  expect(dayplan([sample.lookHeadings], "08:00")).toEqual([
    ["Look", "Talent", "Change from", "Ready by", "Shoot from", "Shoot until", "Waits for", "Spare"],
  ]);
});
