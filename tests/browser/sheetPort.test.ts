import { join } from "node:path";
import { sheetPortContract } from "../sheet/sheetPortContract";
import { openBench, type OpenBench } from "./openBench";

let bench: OpenBench;
beforeAll(async () => {
  const folder = join(__dirname, "../../node_modules/.cache/tackstitch-contract");
  bench = await openBench({ entry: "tests/browser/contractPage.ts", folder });
}, 120_000);
afterAll(() => bench.close());

test.each(sheetPortContract.map(({ title }, index) => [title, index] as const))(
  "the bench %s",
  async (_, index) => {
    const said = await bench.page.evaluate(
      (n) => (globalThis as unknown as { runCase(n: number): Promise<string | null> }).runCase(n),
      index,
    );
    expect(said).toBeNull();
  },
  30_000,
);
