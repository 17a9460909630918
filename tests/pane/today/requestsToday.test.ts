import fc from "fast-check";
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

test("where nobody keeps what was collected nothing is said of it, and without a table of requests nothing at all", async () => {
  const without = await requestsOf([["a", ASOF - 9, "", ASOF + 1, "yes", ""]], headings.slice(0, 6));
  expect(without.collect).toBeNull();
  expect(without.chase).toEqual([]);
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
