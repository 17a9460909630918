import { dayPlan } from "../../../../src/domain/day/dayPlan";
import { dayPlanTable } from "../../../../src/domain/day/dayPlanTable";
import { smallestCrew } from "../../../../src/domain/day/smallestCrew";
import { directionPage } from "../../../../src/pane/handOver/documents/directionPage";
import { runSheet } from "../../../../src/pane/handOver/documents/runSheet";
import { setCards } from "../../../../src/pane/handOver/documents/setCards";
import { sayClock } from "../../../../src/domain/sayClock";
import { readLooks } from "../../../../src/sheet/readLooks";
import { DAY, jobSheets } from "./jobSheets";
import { sourceOf } from "./sourceOf";

const picture = (fileName: string, mark: string) => ({ fileName, dataUrl: `data:image/jpeg;base64,${mark}` });

test("the run sheet has the very cells of DAYPLAN, times as a cell shows them, and the set beside them", async () => {
  const source = await sourceOf(jobSheets, DAY);
  const looks = readLooks(source.read.tables.find(({ kind }) => kind === "looks")!);
  if (!looks.ok) throw new Error("the looks cannot be read");
  const plan = dayPlan({ looks: looks.value, call: 8 / 24, crew: smallestCrew, changes: new Map() });
  if (!plan.ok) throw new Error("no plan");
  const cells = dayPlanTable(plan.value);
  const { table } = runSheet(source);
  expect(table?.headings).toEqual([...cells.headings, "Set"]);
  expect(table?.rows.map((row) => row.slice(0, -1))).toEqual(
    cells.rows.map((row) => row.map((cell, at) => (cells.formats[at] === "time" ? sayClock(cell as number) : cell))),
  );
  expect(table?.rows.map((row) => row.at(-1))).toEqual(["Net loft, indoors", "Slipway, outdoors"]);
});

test("the run sheet warns of a long day and an end after wrap", async () => {
  const sheets = jobSheets.map((sheet) =>
    sheet.name === "Day"
      ? {
          ...sheet,
          rows: [
            ["Date", DAY],
            ["Call", "08:00"],
            ["Wrap", "08:30"],
          ],
        }
      : sheet,
  );
  const { paper } = runSheet(await sourceOf(sheets, DAY));
  const caution = paper.pages[0]?.blocks.find(({ kind }) => kind === "caution");
  expect(caution).toMatchObject({ text: expect.stringMatching(/after wrap\. Times are a plan\. Local rules/) });
});

test("without a call the run sheet has the order alone and says why", async () => {
  const { table, missing } = runSheet(
    await sourceOf(
      jobSheets.filter(({ name }) => name !== "Day"),
      DAY,
    ),
  );
  expect(table).toEqual({
    headings: ["Look", "Talent", "Set"],
    rows: [
      ["Look 2", "Teo", "Net loft, indoors"],
      ["Look 1", "Mina", "Slipway, outdoors"],
    ],
  });
  expect(missing).toContain("No call is known for this day, so there are no times: type it under Today.");
});

test("set cards stand in shooting order, each with its pictures and the look after it", async () => {
  const pictures = [picture("mina-final.png", "AAAA"), picture("Look 02 back.jpg", "BBBB"), picture("sea.jpg", "CCCC")];
  const { ownFile, missing } = setCards(await sourceOf(jobSheets, DAY, { pictures }));
  if (ownFile?.kind !== "page") throw new Error("no page");
  const cards = ownFile.html.split("<article").slice(1);
  expect(cards.map((card) => /<h1>([^<]*)/.exec(card)?.[1])).toEqual(["Look 2", "Look 1"]);
  expect(cards.map((card) => /base64,(\w+)"/.exec(card)?.[1])).toEqual(["BBBB", "AAAA"]);
  expect(cards[0]).toContain("Next: Look 1, Mina, ready by");
  expect(cards[1]).toContain("Last look");
  expect(cards[1]).toContain("<li>1 wool coat</li><li>2 silk slip</li>");
  expect(ownFile.html).not.toContain("CCCC");
  expect(missing).toEqual(["sea.jpg belongs to no look: name it for one, such as look 7.jpg."]);
});

test("the direction page has the words, the references and every look with its pieces", async () => {
  const source = await sourceOf(jobSheets, DAY, { pictures: [picture("sea.jpg", "CCCC")] });
  const { paper, missing } = directionPage({
    ...source,
    job: { ...source.job, job: "Tide line", direction: "Salt and rope." },
  });
  expect(paper.pages[0]?.title).toBe("Tide line: direction");
  expect(paper.pages[0]?.blocks.filter(({ kind }) => kind !== "facts")).toEqual([
    { kind: "text", text: "Salt and rope." },
    { kind: "picture", dataUrl: "data:image/jpeg;base64,CCCC", says: "Reference, sea.jpg" },
    { kind: "heading", text: "Look 2, Teo" },
    { kind: "heading", text: "Look 1, Mina" },
  ]);
  expect(missing.join()).toMatch(/No look has a picture/);
});

test("each look of the direction page has its day where the shoot has several", async () => {
  const sheets = jobSheets.map((sheet) =>
    sheet.name === "Looks"
      ? {
          ...sheet,
          rows: sheet.rows.map((row, at) =>
            at === 1 ? row.map((cell, column) => (column === 2 ? DAY + 1 : cell)) : row,
          ),
        }
      : sheet,
  );
  const daysOf = async (given: typeof sheets | typeof jobSheets) =>
    directionPage(await sourceOf(given, DAY)).paper.pages[0]?.blocks.flatMap((block) =>
      block.kind === "facts" ? block.facts.flatMap(([word, says]) => (word === "Day" ? [says] : [])) : [],
    );
  expect(await daysOf(sheets)).toEqual(["Thu 2026-03-05", "Fri 2026-03-06"]);
  expect(await daysOf(jobSheets)).toEqual(["", ""]);
});

test("the run sheet says who there is in words, one or several", async () => {
  const { paper } = runSheet(await sourceOf(jobSheets, DAY));
  const [facts] = paper.pages[0]?.blocks ?? [];
  expect(facts).toMatchObject({ facts: expect.arrayContaining([["People", "1 dresser, 1 chair, 1 camera"]]) });
});

test.each([setCards, runSheet, directionPage])(
  "%p of a workbook without looks says what makes a table of looks",
  async (make) => {
    const { paper, missing } = make(await sourceOf(jobSheets.slice(0, 1), DAY));
    expect(paper.pages).toEqual([]);
    expect(missing.join()).toMatch(/no table of looks/);
  },
);
