import { readFileSync } from "node:fs";
import { strFromU8, unzipSync } from "fflate";
import { functionDocs } from "../../../src/build/functionDocs.mjs";

test("every function works in a cell of the sample workbook", () => {
  const parts = unzipSync(new Uint8Array(readFileSync("sample-workbooks/two-day-shoot.xlsx")));
  const sheets = Object.keys(parts).filter((path) => path.startsWith("xl/worksheets/sheet"));
  const formulas = sheets.map((path) => strFromU8(parts[path]!)).join("");
  const missing = functionDocs()
    .map(({ id }) => id)
    .filter((id) => !formulas.includes(`_xldudf_TACK_${id}(`));
  expect(missing).toEqual([]);
});
