import { join } from "node:path";
import { functionDocs } from "../../src/build/functionDocs.mjs";
import { openBench, type OpenBench } from "./openBench";
import { shownAt } from "./shownAt";

/** Every documented example, live in the grid's own engine: the workbook compares each with what is documented. */
let bench: OpenBench;
beforeAll(async () => {
  bench = await openBench();
}, 180_000);
afterAll(() => bench.close());
jest.setTimeout(120_000);

test("every example of every function is as documented when typed into a cell", async () => {
  const { page } = bench;
  await page.locator("#file").setInputFiles(join(__dirname, "../../sample-workbooks/functions-by-example.xlsx"));
  await page.waitForFunction(() => document.getElementById("file-name")?.textContent === "functions-by-example.xlsx");
  const families = [...new Set(functionDocs().map((doc) => doc.family))];
  const shown: Record<string, unknown> = {};
  for (const [i, family] of families.entries()) {
    const cell = async (column: string): Promise<string> =>
      /· (.*?)(?: ·|$)/.exec(await shownAt(page, "Summary", `${column}${5 + i}`))?.[1]?.trim() ?? "";
    shown[family] = { asDocumented: await cell("B"), differ: await cell("C") };
  }
  const expected = Object.fromEntries(
    families.map((family) => {
      const examples = functionDocs()
        .filter((doc) => doc.family === family)
        .flatMap((doc) => doc.examples);
      return [family, { asDocumented: String(examples.length), differ: "0" }];
    }),
  );
  expect(shown).toEqual(expected);
});
