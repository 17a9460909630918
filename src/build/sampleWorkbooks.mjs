import { readFileSync, writeFileSync } from "node:fs";
import { strFromU8, unzipSync } from "fflate";
import { markDynamicArrays } from "./sample/markDynamicArrays.mjs";
import { DUE_FORMULA, readScenario, sampleWorkbook } from "./sample/writeWorkbook.mjs";

/** Writes sample-workbooks/two-day-shoot.xlsx from its scenario; with --check only says whether the file is the one it would write. */
const target = new URL("../../sample-workbooks/two-day-shoot.xlsx", import.meta.url);
const { workbook, spills } = sampleWorkbook(readScenario());
const plain = new Uint8Array(await workbook.xlsx.writeBuffer());
const bytes = markDynamicArrays(plain, spills, { table: "Loans", column: "Return due", formula: DUE_FORMULA });

/** Parts compared by their text: how bytes are packed may differ between machines, what they say may not. */
function parts(zip) {
  return JSON.stringify(
    Object.entries(unzipSync(zip))
      .map(([name, data]) => [name, strFromU8(data)])
      .sort(),
  );
}

if (process.argv.includes("--check")) {
  if (parts(new Uint8Array(readFileSync(target))) !== parts(bytes)) {
    console.error("sample-workbooks/two-day-shoot.xlsx is stale: run npm run samples");
    process.exit(1);
  }
} else writeFileSync(target, bytes);
