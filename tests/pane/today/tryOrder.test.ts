import fc from "fast-check";
import { dayplan } from "../../../src/functions/bindings/dayplan";
import { lookOrder } from "../../../src/domain/day/lookOrder";
import { dayInOrder } from "../../../src/pane/today/dayInOrder";
import { looksToday } from "../../../src/pane/today/looksToday";
import { movedLook } from "../../../src/pane/today/movedLook";
import { orderEdits } from "../../../src/pane/today/orderEdits";
import { sayBestOrder } from "../../../src/pane/today/sayBestOrder";
import { sayTriedEnd } from "../../../src/pane/today/sayTriedEnd";
import type { Cell } from "../../../src/sheet/cell";
import { readSheets } from "../readSheets";

const DAY1 = 46111;
const HEADINGS = ["Look", "Order", "Date", "Talent", "Change", "Shooting", "After", "Shot at"];
// In the order given, by hand: Ana changes 09:00-09:40, is shot until 09:50; Bo changes 09:40-09:50, is shot until 10:50.
// The other way round: Bo changes 09:00-09:10, is shot until 10:10; Ana changes 09:10-09:50, is shot 10:10-10:20.
const rows: readonly (readonly Cell[])[] = [
  [1, 10, DAY1, "Ana", 40, 10, null, null],
  [2, 20, DAY1, "Bo", 10, 60, null, null],
  [1, 10, DAY1 + 1, "Cy", 10, 10, null, null],
];

async function givenOf(of: readonly (readonly Cell[])[], headings: readonly string[] = HEADINGS) {
  const read = await readSheets([{ name: "Looks", rows: [headings, ...of] }]);
  return looksToday(read, DAY1, null, new Map([[DAY1, 9 / 24]]))!.given!;
}

test("an order that is tried ends as DAYPLAN ends it, and is held against the wrap and the order given", async () => {
  const { day } = await givenOf(rows);
  const tried = dayInOrder(day, ["2", "1"], 10.5 / 24);
  expect(tried.looks.map(({ label }) => label)).toEqual([2, 1]);
  expect([tried.minutesSooner, tried.minutesSpareAtWrap]).toEqual([30, 10]);
  const table = dayplan(
    [HEADINGS, [1, 2, DAY1, "Ana", 40, 10, null, null], [2, 1, DAY1, "Bo", 10, 60, null, null]],
    9 / 24,
  );
  expect(tried.ends).toBe(table.at(-1)?.[5]);
  expect(sayTriedEnd(tried, 10.5 / 24, false)).toBe(
    "The last shot ends at 10:20, 10 min before the wrap at 10:30, 30 min sooner than in the order given.",
  );
  expect(sayTriedEnd(dayInOrder(day, ["1", "2"], 10.5 / 24), 10.5 / 24, true)).toBe(
    "The last shot ends at 10:50, 20 min after the wrap at 10:30, in the order given.",
  );
});

test("an order that After rules out says why and has no times", async () => {
  const { day } = await givenOf([rows[0]!, [2, 20, DAY1, "Bo", 10, 60, "1", null]]);
  const tried = dayInOrder(day, ["2", "1"], null);
  expect([tried.shots, tried.ends, tried.minutesSooner]).toEqual([null, null, null]);
  expect(tried.sentence).toContain("Look 2 must come after look 1");
  expect(sayTriedEnd(tried, null, false)).toBe(tried.sentence);
});

test("the best order is told with what it saves, and that it is proved", async () => {
  const best = lookOrder((await givenOf(rows)).day);
  if (!best.ok) throw new Error("no order was found");
  expect(best.value.plan.looks.map(({ look }) => look.label)).toEqual([2, 1]);
  expect(sayBestOrder(best.value)).toBe("It saves 30 min. Proved best: no order ends sooner than 10:20.");
  expect(sayBestOrder({ ...best.value, isProvedBest: false, endsNotBefore: 10 / 24, minutesSaved: 0 })).toBe(
    "It saves nothing over the order given. Best found: no order ends before 10:00, so at most 20 min are left to gain.",
  );
  expect(sayBestOrder({ ...best.value, minutesSaved: null })).toContain("does not keep After and Fixed");
});

test("a look moves to the place it is given, within the list and not before what has been shot", () => {
  expect(movedLook(["a", "b", "c"], "c", 0, 0)).toEqual(["c", "a", "b"]);
  expect(movedLook(["a", "b", "c"], "a", 2, 0)).toEqual(["b", "c", "a"]);
  expect(movedLook(["a", "b", "c"], "c", -5, 1)).toEqual(["a", "c", "b"]);
  expect(movedLook(["a", "b", "c"], "a", 2, 1)).toEqual(["a", "b", "c"]);
  fc.assert(
    fc.property(fc.uniqueArray(fc.string(), { minLength: 1 }), fc.nat(), fc.integer(), (keys, pick, place) => {
      const moved = movedLook(keys, keys[pick % keys.length]!, place, 0);
      expect([...moved].sort()).toEqual([...keys].sort());
    }),
  );
});

test("writing an order deals out the day's own numbers, in the rows of that day, each with what it replaces", async () => {
  const { table, looks } = await givenOf(rows);
  expect(orderEdits(table, [looks[1]!, looks[0]!])).toEqual([
    { at: { sheetId: "s0", row: 2, column: 1 }, expected: 20, value: 10 },
    { at: { sheetId: "s0", row: 1, column: 1 }, expected: 10, value: 20 },
  ]);
  expect(orderEdits(table, looks)).toEqual([]);
});

test("numbers that are missing or there twice become 1, 2, 3, and a look number used on two days stays on its day", async () => {
  const { table, looks } = await givenOf([
    [1, 1, DAY1 - 7, "Cy", 10, 10, null, null],
    [1, null, DAY1, "Ana", 40, 10, null, null],
    [2, 1, DAY1, "Bo", 10, 60, null, null],
  ]);
  expect(looks.map(({ label }) => label)).toEqual([2, 1]);
  expect(orderEdits(table, [...looks].reverse())).toEqual([
    { at: { sheetId: "s0", row: 2, column: 1 }, expected: null, value: 1 },
    { at: { sheetId: "s0", row: 3, column: 1 }, expected: 1, value: 2 },
  ]);
});

test("without an Order column there is nothing to write to", async () => {
  const { table, looks } = await givenOf([[1, DAY1, "Ana", 10, 10]], ["Look", "Date", "Talent", "Change", "Shooting"]);
  expect(orderEdits(table, looks)).toBeNull();
});
