import { readFileSync, writeFileSync } from "node:fs";
import { strFromU8, unzipSync } from "fflate";
import { examplesWorkbook } from "./sample/examplesWorkbook.mjs";
import { markDynamicArrays } from "./sample/markDynamicArrays.mjs";
import { DUE_FORMULA } from "./sample/loansSheet.mjs";
import { readScenario, sampleWorkbook } from "./sample/writeWorkbook.mjs";

// Writes the sample workbooks from their scenarios; with --check only says whether the files are those it would write.

/** Parts compared by their text: how bytes are packed may differ between machines, what they say may not. */
function parts(zip) {
  return JSON.stringify(
    Object.entries(unzipSync(zip))
      .map(([name, data]) => [name, strFromU8(data)])
      .sort(),
  );
}

async function write(name, { workbook, spills }, columnFormula) {
  const target = new URL(`../../sample-workbooks/${name}`, import.meta.url);
  const bytes = markDynamicArrays(new Uint8Array(await workbook.xlsx.writeBuffer()), spills, columnFormula);
  if (!process.argv.includes("--check")) writeFileSync(target, bytes);
  else if (parts(new Uint8Array(readFileSync(target))) !== parts(bytes)) {
    console.error(`sample-workbooks/${name} is stale: run npm run samples`);
    process.exitCode = 1;
  }
}

const due = { table: "Loans", column: "Return due", formula: DUE_FORMULA };
await write("two-day-shoot.xlsx", sampleWorkbook(readScenario()), due);
await write("functions-by-example.xlsx", examplesWorkbook());
