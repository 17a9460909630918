import { clashTable } from "../../../src/domain/day/clashTable";

test("one row a clash under its headings, and the headings alone where there is none", () => {
  const clash = { piece: "P1", look: 1, otherLook: null, why: "not out, needed 2026-03-28" };
  expect(clashTable([clash])).toEqual({
    headings: ["Piece", "Look", "Other look", "Why"],
    formats: ["as is", "as is", "as is", "as is"],
    rows: [["P1", 1, null, "not out, needed 2026-03-28"]],
  });
  expect(clashTable([]).rows).toEqual([]);
});
