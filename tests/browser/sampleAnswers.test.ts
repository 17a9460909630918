import { readFileSync } from "node:fs";
import { Workbook } from "@cj-tech-master/excelts";
import figures from "../../sample-workbooks/two-day-shoot.figures.json";
import { openBench, type OpenBench } from "./openBench";
import { settled } from "./settled";

/**
 * The answer sheets of the sample workbook, as its own formulas fill them in the bench, against LibreOffice Calc, which
 * worked out the same cells from its own built-in functions (the source stands in the figures' file). What the cells hold
 * is read from the file that the bench saves.
 */
let bench: OpenBench;
let saved: Workbook;

beforeAll(async () => {
  bench = await openBench();
  await settled(bench.page);
  const [file] = await Promise.all([
    bench.page.waitForEvent("download"),
    bench.page.getByRole("button", { name: "Save" }).click(),
  ]);
  saved = new Workbook();
  await saved.xlsx.load(readFileSync(await file.path()));
}, 180_000);
afterAll(() => bench.close());

/** What a cell holds; dates as serial days, errors by their code. */
function held(address: string): unknown {
  const [sheet, cell] = address.split("!") as [string, string];
  const value = saved.getWorksheet(sheet)!.getCell(cell).value as unknown;
  return plain(
    value !== null && typeof value === "object" && "formula" in value ? (value as { result?: unknown }).result : value,
  );
}

function plain(value: unknown): unknown {
  if (value instanceof Date) return value.getTime() / 86400000 + 25569;
  return value !== null && typeof value === "object" && "error" in value ? value.error : value;
}

test.each(Object.entries(figures.cells))("%s is what Calc works out, %d", (address, expected) => {
  expect(held(address)).toBeCloseTo(expected, 9);
});

test.each(Object.entries(figures.lists))("the list from %s down is Calc's, in its order", (address, expected) => {
  const [, start, column, row] = /^(.+!)([A-Z]+)(\d+)$/.exec(address)!;
  const listed = expected.map((_, index) => String(held(`${start}${column}${Number(row) + index}`)));
  expect(listed).toEqual(expected);
});

test("below each list there is nothing more, but what cannot be told", () => {
  const after = (address: string, count: number): unknown => {
    const [, start, column, row] = /^(.+!)([A-Z]+)(\d+)$/.exec(address)!;
    return held(`${start}${column}${Number(row) + count}`);
  };
  const next = Object.entries(figures.lists).map(([address, { length }]) => [address, after(address, length) ?? null]);
  // The terms of 207 cannot be read, so whether it is due cannot be told.
  expect(Object.fromEntries(next)).toEqual({
    "Returns!A6": 207,
    "Returns!J6": null,
    "To chase!A6": null,
    "Money!A6": null,
    "Value!D11": null,
  });
});

test("the only errors outside Totals and Late are those that planted slips bring about", () => {
  const errors: string[] = [];
  for (const sheet of saved.worksheets.filter(({ name }) => !["Loans", "Totals", "Late"].includes(name)))
    sheet.eachRow((row) =>
      row.eachCell((cell) => {
        if (/^#/.test(String(held(`${sheet.name}!${cell.address}`)))) errors.push(`${sheet.name}!${cell.address}`);
      }),
    );
  // In turn: a value that is "tbc", doors that open when rung, terms that cannot be read, a return that could be two days.
  expect(errors.sort()).toEqual(["Best order!M6", "Job!B8", "Returns!D68", "Run order!B15"]);
});
