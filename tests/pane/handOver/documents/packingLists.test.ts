import { packingLists } from "../../../../src/pane/handOver/documents/packingLists";
import { bags } from "../../../../src/functions/bindings/bags";
import { DAY, jobSheets } from "./jobSheets";
import { sourceOf } from "./sourceOf";

test("without bags in the sheet, what is out is packed as BAGS packs it", async () => {
  const source = await sourceOf(jobSheets, DAY, { bagLimitGrams: 2_200 });
  const { table, paper, missing } = packingLists(source);
  // What is out: the coat, two of the hats, the scarf.
  const expected = bags(
    [
      ["Piece", "Weight", "Quantity"],
      ["1", 2, 1],
      ["3", 0.2, 2],
      ["5", 0.1, 1],
    ],
    2.2,
  ).slice(1) as [string, number, number][];
  const singles = table!.rows.flatMap((row) =>
    Array.from({ length: row[4] as number }, () => [row[1], row[5], Number(row[0])]),
  );
  const sorted = (rows: unknown[][]) => rows.map((row) => row.join(" ")).sort();
  expect(sorted(singles)).toEqual(sorted(expected));
  expect(paper.pages.map(({ title }) => title)).toEqual(["Bag 1", "Bag 2"]);
  expect(missing).toEqual([
    "The sheet says no bags (column Bag), so the pieces are packed here by weight, as BAGS does.",
  ]);
});

test("a piece above the limit is named and stands in no bag", async () => {
  const { missing, paper } = packingLists(await sourceOf(jobSheets, DAY, { bagLimitGrams: 1_000 }));
  expect(missing.find((sentence) => sentence.startsWith("1 wool coat is in no bag: "))).toMatch(
    /at least 2 for this piece/,
  );
  expect(paper.pages.map(({ title }) => title)).toEqual(["Bag 1", "In no bag"]);
});

test("bags that the sheet names are kept, one spelling a bag, and what is in none comes as a list of its own", async () => {
  const [loans, ...others] = jobSheets;
  const bagOf = ["Bag", "Blue", "blue ", "BLUE", "", ""];
  const rows = loans!.rows.map((row, at) => [...row, bagOf[at] ?? null]);
  const { paper, table } = packingLists(await sourceOf([{ name: "Loans", rows }, ...others], DAY));
  expect(paper.pages.map(({ title }) => title)).toEqual(["Blue", "In no bag yet"]);
  expect(table?.rows.map((row) => [row[0], row[1], row[4]])).toEqual([
    ["Blue", "1", 1],
    ["Blue", "3", 2],
    ["", "5", 1],
  ]);
});

test("a bag named by a letter or a number is headed as a bag, and one by a word as it is named", async () => {
  const [loans, ...others] = jobSheets;
  const titlesOf = async (bag: string) => {
    const rows = loans!.rows.map((row, at) => [...row, at === 0 ? "Bag" : bag]);
    const { paper } = packingLists(await sourceOf([{ name: "Loans", rows }, ...others], DAY));
    return paper.pages.map(({ title }) => title);
  };
  expect(await titlesOf("A")).toEqual(["Bag A"]);
  expect(await titlesOf("B2")).toEqual(["Bag B2"]);
  expect(await titlesOf("12")).toEqual(["Bag 12"]);
  expect(await titlesOf("Trunk")).toEqual(["Trunk"]);
});

test("a bag that is heavy to lift says so, and every list has the caution", async () => {
  const [loans, ...others] = jobSheets;
  const rows = loans!.rows.map((row, at) =>
    [...row, at === 0 ? "Bag" : "Trunk"].map((cell, column) => (at === 1 && column === 8 ? 25 : cell)),
  );
  const { paper } = packingLists(await sourceOf([{ name: "Loans", rows }, ...others], DAY));
  const cautions = paper.pages[0]!.blocks.flatMap((block) => (block.kind === "caution" ? [block.text] : []));
  expect(cautions[0]).toMatch(/^25\.5 kg \(56 lb\) is past what stylists are known to carry/);
  expect(cautions[1]).toMatch(
    /Lifting and carrying injure\..* two hands .* a step or two .* poor grip.* no medical advice: local rules/,
  );
});
