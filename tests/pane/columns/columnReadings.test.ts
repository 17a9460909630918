import { columnReadings } from "../../../src/pane/columns/columnReadings";
import { readSheets } from "../readSheets";

test("samples of a column of terms say what they are read as, where that is not what they say word for word", async () => {
  const rows = [
    ["Lender", "Kind", "Contact", "Courier days", "Terms"],
    ["Orla", "press office", "Ines", 1, "7 days"],
    ["Halden", "showroom", "Ilse", 1, "5 wd post wrap"],
    ["Ado", "showroom", "Jo", 1, "whenever"],
  ];
  const { tables } = await readSheets([{ name: "Lenders", rows }]);
  expect(tables.map(({ kind }) => kind)).toEqual(["lenders"]);
  const samples = Object.fromEntries(columnReadings(tables[0]!, []).map((one) => [one.heading, one.samples]));
  expect(samples["Terms"]).toEqual([
    '"7 days"',
    '"5 wd post wrap" (read as 5 working days after the shoot)',
    '"whenever" (not understood)',
  ]);
  expect(samples["Lender"]).toEqual(['"Orla"', '"Halden"', '"Ado"']);
});

test("samples of days and times are shown as days and times, in columns that are read and in those that say date", async () => {
  const rows = [
    ["Piece", "Lender", "Value", "Out", "Fitting", "Insured date", "Rack"],
    [101, "Orla", 46086, 46083, 46086, 46087, 46087],
    [102, "Orla", 120, 46083, "tbc", null, null],
  ];
  const stops = [
    ["Stop", "Address", "Minutes", "Open", "Close"],
    ["Orla", "4 Rope Walk", 15, 0.375, 0.75],
    ["Halden", "9 Quay", 15, 0.375, 18],
  ];
  const { tables } = await readSheets([
    { name: "Loans", rows },
    { name: "Stops", rows: stops },
  ]);
  const samples = Object.fromEntries(
    tables.flatMap((table) => columnReadings(table, []).map((one) => [one.heading, one.samples])),
  );
  expect(samples["Out"]).toEqual(["2026-03-02"]);
  expect(samples["Fitting"]).toEqual(["2026-03-05", '"tbc"']);
  expect(samples["Insured date"]).toEqual(["2026-03-06"]);
  // Money and what nothing is known of stay the numbers they are.
  expect(samples["Value"]).toEqual(["46086", "120"]);
  expect(samples["Rack"]).toEqual(["46087"]);
  expect(samples["Open"]).toEqual(["09:00"]);
  expect(samples["Close"]).toEqual(["18:00", "18"]);
});
