import fc from "fast-check";
import { runChecks } from "../../../src/checks/runChecks";
import { chaserows } from "../../../src/functions/bindings/chaserows";
import { requestsToday } from "../../../src/pane/today/requestsToday";
import type { Cell } from "../../../src/sheet/cell";
import { readSheets } from "../readSheets";

// Thursday 2026-03-05.
const ASOF = 46086;
const headings = ["Lender", "Asked", "Wanted", "Needed by", "Answer", "Collect", "Collected"];

async function requestsOf(rows: readonly (readonly Cell[])[], head: readonly string[] = headings) {
  const read = await readSheets([
    { name: "Requests", rows: [head, ...rows] },
    {
      name: "Lenders",
      rows: [
        ["Lender", "Contact", "Terms"],
        ["Ado & Fils", "Bea", "7 days"],
      ],
    },
  ]);
  return requestsToday(read, ASOF);
}

test("an unanswered request of two working days ago is chased, the soonest need first, with whom to ask for", async () => {
  const { chase } = await requestsOf([
    ["Maison Orla", ASOF - 3, "hats", ASOF + 9, null, null, null],
    ["ado & fils", ASOF - 2, "coats", ASOF + 4, "waiting", null, null],
    ["Halden", ASOF - 1, "knits", ASOF + 1, null, null, null],
    ["Rail & Co", ASOF - 9, "boots", ASOF + 1, "no", null, null],
  ]);
  expect(chase?.map(({ lender, wanted, contact, at }) => [lender, wanted, contact, at.row, at.column])).toEqual([
    ["ado & fils", "coats", "Bea", 2, 4],
    ["Maison Orla", "hats", "", 1, 4],
  ]);
});

test("what is lent and not fetched is to be collected, near or not, by need, and what has no day of need last", async () => {
  const { collect, chase } = await requestsOf([
    ["a", ASOF - 9, "", null, "yes", "", null],
    ["b", ASOF - 9, "", ASOF + 30, "yes", "Friday, back door", null],
    ["c", ASOF - 9, "", ASOF + 2, "part", "", null],
    ["d", ASOF - 9, "", ASOF + 1, "yes", "", ASOF - 1],
    ["e", ASOF - 9, "", ASOF - 1, "yes", "", "no"],
    ["f", ASOF - 9, "", ASOF + 1, "no", "", null],
  ]);
  expect(collect?.map(({ lender, neededBy, collect: where }) => [lender, neededBy, where])).toEqual([
    ["e", ASOF - 1, ""],
    ["c", ASOF + 2, ""],
    ["b", ASOF + 30, "Friday, back door"],
    ["a", null, ""],
  ]);
  expect(chase).toEqual([]);
});

test("what is chased here and what is marked so among the lent are together the rows of CHASEROWS", async () => {
  const rows = [
    ["a", ASOF - 9, "", ASOF + 9, null, "", null],
    ["b", ASOF - 9, "", ASOF + 30, "yes", "", null],
    ["c", ASOF - 9, "", ASOF + 1, "yes", "", null],
    ["d", ASOF - 9, "", ASOF - 4, "part", "", null],
    ["e", ASOF, "", ASOF + 9, null, "", null],
    ["f", ASOF - 9, "", ASOF + 1, "yes", "", ASOF - 1],
  ];
  const { chase, collect } = await requestsOf(rows);
  expect(chase?.map(({ lender, isChased }) => [lender, isChased])).toEqual([["a", true]]);
  expect(collect?.map(({ lender, isChased }) => [lender, isChased])).toEqual([
    ["d", true],
    ["c", true],
    ["b", false],
  ]);
  expect(chaserows([headings, ...rows], ASOF).map(([lender]) => lender)).toEqual(["Lender", "d", "c", "a"]);
});

test("where nobody keeps what was collected it is what CHASEROWS lists: lent, and needed soon or past", async () => {
  const head = headings.slice(0, 6);
  const rows = [
    ["a", ASOF - 9, "", ASOF + 1, "yes", ""],
    ["b", ASOF - 9, "", ASOF - 4, "part", ""],
    ["c", ASOF - 9, "", ASOF + 30, "yes", ""],
    ["d", ASOF - 9, "", ASOF + 1, "no", ""],
  ];
  const { chase, collect } = await requestsOf(rows, head);
  expect(collect?.map(({ lender, isCollectionKept, at }) => [lender, isCollectionKept, at.column])).toEqual([
    ["b", false, 3],
    ["a", false, 3],
  ]);
  expect(chase).toEqual([]);
  expect(chaserows([head, ...rows], ASOF).map(([lender]) => lender)).toEqual(["Lender", "b", "a"]);
});

test("a lender is chased by its own closed weekdays and by the closed days listed, as the sheet check has it", async () => {
  // Asked on Monday the 2nd; on Thursday the 5th three working days have gone by, but not for who is closed on two of them.
  const asked = ASOF - 3;
  const sheets = (closed: readonly Cell[]) => [
    {
      name: "Requests",
      rows: [
        ["Lender", "Asked", "Wanted", "Needed by", "Answer"],
        ["Orla", asked, "hats", ASOF + 9, null],
        ["Halden", asked, "hats", ASOF + 9, null],
      ],
    },
    {
      name: "Lenders",
      rows: [
        ["Lender", "Contact", "Terms", "Closed weekdays"],
        ["Orla", "Bea", "7 days", null],
        ["Halden", "Ilse", "7 days", "Tue, Wed, Sat, Sun"],
      ],
    },
    {
      name: "Job",
      tables: [{ name: "ClosedDays", row: 0, column: 0, rowCount: closed.length + 1, columnCount: 1 }],
      rows: [["Bank holidays"], ...closed.map((day) => [day])],
    },
  ];
  const chased = async (closed: readonly Cell[]): Promise<readonly string[]> => {
    const read = await readSheets(sheets(closed));
    const today = requestsToday(read, ASOF).chase?.map(({ lender }) => lender) ?? [];
    const { sheets: snapshots } = read.workbook;
    const found = runChecks({ dateSystem: 1900, tables: read.tables, sheets: snapshots }, { asOf: ASOF });
    const rules = found.filter(({ ruleId }) => ruleId === "requestToChase").map(({ at }) => at.row);
    expect(rules).toEqual(today.map((lender) => (lender === "Orla" ? 1 : 2)));
    return today;
  };
  expect(await chased([ASOF + 40])).toEqual(["Orla"]);
  expect(await chased([ASOF - 1, ASOF - 2])).toEqual([]);
});

test("without a table of requests nothing is said", async () => {
  const read = await readSheets([
    {
      name: "Loans",
      rows: [
        ["Piece", "Lender", "Out", "Due"],
        ["1", "a", ASOF, ASOF],
      ],
    },
  ]);
  expect(requestsToday(read, ASOF)).toEqual({ chase: null, collect: null, untold: [] });
});

test("a request of which it cannot be told is listed with the cell and its sentence", async () => {
  const { chase, untold } = await requestsOf([["a", "a while ago", "", ASOF + 1, null, null, null]]);
  expect(chase).toEqual([]);
  expect(untold).toHaveLength(1);
  expect(untold[0]).toMatchObject({ name: "a", at: { row: 1, column: 1 } });
  expect(untold[0]?.sentence).toContain("a while ago");
});

test("what is chased and what is near of what is collected are together the rows of CHASEROWS", async () => {
  const day = fc.option(fc.integer({ min: ASOF - 8, max: ASOF + 8 }));
  const answer = fc.constantFrom("yes", "no", "part", "waiting", null);
  const row = fc.tuple(fc.constant("x"), day, fc.constant("w"), day, answer, fc.constant(null), day);
  await fc.assert(
    fc.asyncProperty(fc.array(row, { minLength: 1, maxLength: 10 }), async (given) => {
      const rows = given.map((cells, index) => [`lender ${index}`, ...cells.slice(1)] as Cell[]);
      const { chase, collect } = await requestsOf(rows);
      const listed = chaserows([headings, ...rows], ASOF)
        .slice(1)
        .map((cells) => cells[0]);
      const chased = (chase ?? []).map(({ lender }) => lender);
      const collected = (collect ?? []).map(({ lender }) => lender);
      expect(listed.every((lender) => chased.includes(lender) || collected.includes(lender))).toBe(true);
      expect(chased).toEqual(listed.filter((lender) => !collected.includes(lender)));
    }),
  );
});

test("without a column Collected the two lists together are the rows of CHASEROWS, neither more nor fewer", async () => {
  const day = fc.option(fc.integer({ min: ASOF - 8, max: ASOF + 8 }));
  const answer = fc.constantFrom("yes", "no", "part", "waiting", null);
  const row = fc.tuple(fc.constant("x"), day, fc.constant("w"), day, answer);
  await fc.assert(
    fc.asyncProperty(fc.array(row, { minLength: 1, maxLength: 10 }), async (given) => {
      const rows = given.map((cells, index) => [`lender ${index}`, ...cells.slice(1)] as Cell[]);
      const head = headings.slice(0, 5);
      const { chase, collect } = await requestsOf(rows, head);
      const listed = chaserows([head, ...rows], ASOF).slice(1);
      const shown = [...(chase ?? []), ...(collect ?? [])].map(({ lender }) => lender);
      expect([...shown].sort()).toEqual(listed.map((cells) => String(cells[0])).sort());
    }),
  );
});
