import { readBagLimitNote } from "../../src/sheet/readBagLimitNote";
import type { Cell } from "../../src/sheet/cell";
import type { SheetSnapshot } from "../../src/sheet/sheetSnapshot";
import { workbookOf } from "../checks/workbookOf";

const sheetsOf = (rows: readonly (readonly Cell[])[]): readonly SheetSnapshot[] =>
  workbookOf({ tables: {}, beside: { Job: { rows } } }).sheets ?? [];

test.each([
  [[["Bag limit", 12]], 12_000],
  [[["Bag limit (lb)", 20]], 20 * 453.59237],
  [[["Max bag weight", "8 kg"]], 8000],
  [
    [
      ["Call", "08:00"],
      ["Limit per bag", "9,5 kg"],
    ],
    9500,
  ],
  [
    [
      ["Bag limit", "heavy"],
      ["Max per bag", 7],
    ],
    7000,
  ],
] as const)("%j is a limit of %d g", (rows, grams) => {
  expect(readBagLimitNote(sheetsOf(rows))).toMatchObject({ grams, sheetName: "Job" });
});

test.each([[[["Bag", 12]]], [[["Bag limit", 0]]], [[["Insurance limit", 5000]]], [[["Bag limit"]]]])(
  "%j is none",
  (rows) => expect(readBagLimitNote(sheetsOf(rows))).toBeNull(),
);
