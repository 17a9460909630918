import { readWhere } from "../../src/sheet/readWhere";

test.each([
  ["indoors", "indoors"],
  ["Inside", "indoors"],
  ["INT.", "indoors"],
  ["intérieur", "indoors"],
  ["drinnen", "indoors"],
  ["outdoors", "outdoors"],
  ["Ext", "outdoors"],
  ["exterior", "outdoors"],
  ["esterno", "outdoors"],
  ["außen", "outdoors"],
  ["outdoors, by the quay", "outdoors"],
  ["inside and outside", null],
  ["Studio 2", null],
  ["", null],
  [null, null],
])("%j is %j", (raw, where) => {
  expect(readWhere(raw, "Where")).toEqual({ ok: true, value: where });
});

test("an error value is passed on", () => {
  expect(readWhere({ type: "Error", basicValue: "#N/A" }, "Where").ok).toBe(false);
});
