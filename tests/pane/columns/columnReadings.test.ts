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
