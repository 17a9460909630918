import { returnSlips } from "../../../../src/pane/handOver/documents/returnSlips";
import { paperHtml } from "../../../../src/pane/handOver/paper/paperHtml";
import { DAY, jobSheets } from "./jobSheets";
import { sourceOf } from "./sourceOf";

test("each lender gets a slip with what is still out, and what comes back on the day", async () => {
  const { paper, table } = returnSlips(await sourceOf(jobSheets, DAY));
  expect(paper.pages.map(({ title }) => title)).toEqual(["Return to Ado & Fils", "Return to Maison Orla"]);
  expect(table?.rows.map((row) => [row[0], row[1], row[6], row[7], row[8], row[9]])).toEqual([
    ["Ado & Fils", "1", 1, 1250, "GBP", "2026-03-06"],
    ["Ado & Fils", "2", 1, 400, "GBP", "2026-03-06"],
    ["Maison Orla", "3", 2, 180, "EUR", "2026-03-09"],
    ["Maison Orla", "5", 1, null, "", ""],
  ]);
});

test("a slip says who, where, how much and on what terms", async () => {
  const { paper } = returnSlips(await sourceOf(jobSheets, DAY));
  const facts = paper.pages.map(({ blocks }) =>
    blocks[0]?.kind === "facts" ? Object.fromEntries(blocks[0].facts) : {},
  );
  expect(facts[0]).toMatchObject({ Address: "3 Ropewalk; yard", Slips: "AF-1", Terms: "7 days", Value: "GBP 1,650" });
  expect(facts[1]).toMatchObject({ Pieces: "3 pieces", Value: "EUR 180, and 1 without a value" });
});

test("no slip tells who wears what, and a description that does is told", async () => {
  const source = await sourceOf(jobSheets, DAY);
  const { paper, missing } = returnSlips(source);
  const html = paperHtml(paper, "A4");
  expect(html).not.toContain("Teo");
  expect(html.match(/Mina/g)).toEqual(["Mina"]);
  expect(missing).toContain("5 scarf for Mina names Mina; a lender's slip should not: change the text.");
});

test("one lender's slip can be had alone, whatever the spelling", async () => {
  const { paper } = returnSlips(await sourceOf(jobSheets, DAY, { lenderKey: "adofils" }));
  expect(paper.pages.map(({ title }) => title)).toEqual(["Return to Ado & Fils"]);
});

test("where nothing is out, a sentence says so", async () => {
  const { paper, table, missing } = returnSlips(await sourceOf(jobSheets, DAY - 20));
  expect([paper.pages, table]).toEqual([[], null]);
  expect(missing).toEqual(["Nothing is out on Fri 2026-02-13, so there is no slip to write."]);
});

test("a row of which it cannot be told whether it is out is left out by name", async () => {
  const [loans, ...others] = jobSheets;
  const rows = loans!.rows.map((row, at) =>
    at === 1 ? row.map((cell, column) => (column === 9 ? "03/04/26" : cell)) : row,
  );
  const { missing } = returnSlips(await sourceOf([{ name: "Loans", rows }, ...others], DAY));
  expect(missing.find((sentence) => sentence.startsWith("1 wool coat is left out: "))).toMatch(/03\/04\/26/);
});

test("where the sheet does not say how the pieces go back, the slip has a line to write it on", async () => {
  const lines = async (sheets: typeof jobSheets) =>
    returnSlips(await sourceOf(sheets, DAY)).paper.pages.map(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === "lines" ? block.words : [])),
    );
  expect((await lines(jobSheets))[0]?.[0]).toBe("Returned how, and its tracking number");
  const told = jobSheets.map((sheet) =>
    sheet.name !== "Loans"
      ? sheet
      : { ...sheet, rows: sheet.rows.map((row, at) => [...row, at === 0 ? "Tracking" : at === 1 ? "TR 77" : null]) },
  );
  expect((await lines(told)).map(([first]) => first)).toEqual([
    "Handed over by, date and time",
    "Returned how, and its tracking number",
  ]);
});

test("as values each piece carries its own proof of return", async () => {
  const told = jobSheets.map((sheet) =>
    sheet.name !== "Loans"
      ? sheet
      : {
          ...sheet,
          rows: sheet.rows.map((row, at) => [
            ...row,
            ...(at === 0
              ? ["Returned how", "Tracking", "Received by"]
              : at === 2
                ? ["courier", "TR 77", "Ines"]
                : [null, null, null]),
          ]),
        },
  );
  const { table } = returnSlips(await sourceOf(told, DAY));
  expect(table?.headings.slice(-3)).toEqual(["Returned how", "Tracking", "Received by"]);
  expect(table?.rows.slice(0, 2).map((row) => row.slice(-3))).toEqual([
    ["", "", ""],
    ["courier", "TR 77", "Ines"],
  ]);
});
