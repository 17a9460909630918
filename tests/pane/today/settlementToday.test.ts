import { runChecks } from "../../../src/checks/runChecks";
import { duerows } from "../../../src/functions/bindings/duerows";
import { jobmoney } from "../../../src/functions/bindings/jobmoney";
import { laterows } from "../../../src/functions/bindings/laterows";
import { lendertotals } from "../../../src/functions/bindings/lendertotals";
import { peakvalue } from "../../../src/functions/bindings/peakvalue";
import { valuebyday } from "../../../src/functions/bindings/valuebyday";
import { valueout } from "../../../src/functions/bindings/valueout";
import { loansToday } from "../../../src/pane/today/loansToday";
import { pieceTables } from "../../../src/pane/today/pieceTables";
import { preparesToday } from "../../../src/pane/today/preparesToday";
import { unprovedToday } from "../../../src/pane/today/unprovedToday";
import { valueToday } from "../../../src/pane/today/valueToday";
import { readSheets } from "../readSheets";

// What is noted when a loan ends, one note at a time: what each changes in the cells, in Today and in the check.

// Thursday 2026-03-05.
const ASOF = 46_086;
const LATE = {
  Piece: "boots",
  Kind: "boots",
  Lender: "Orla",
  Job: "Spring",
  Out: ASOF - 9,
  Due: ASOF - 2,
  Back: null,
  Value: 100,
  "Extended to": null,
  Settled: null,
  "Condition back": null,
  "Returned how": null,
  Tracking: null,
  "Received by": null,
  Alteration: "zip let out",
  "Alteration undone": null,
  "Tape off": null,
  "Rental fee": 10,
  Deposit: 50,
};
type Notes = Partial<Record<keyof typeof LATE, string | number | null>>;
const WATCHED = new Set(
  "lateNotBack returnNoDay returnNotProved settledAndBack alterationNotUndone tapeNotOff depositNotBack".split(" "),
);

async function standing(notes: Notes) {
  const row = { ...LATE, ...notes };
  const rows = [Object.keys(row), Object.values(row)];
  const read = await readSheets([{ name: "Loans", rows }]);
  const pieces = pieceTables(read.tables);
  const findings = runChecks({ dateSystem: 1900, tables: read.tables, sheets: read.workbook.sheets }, { asOf: ASOF });
  const loans = loansToday(pieces, ASOF);
  const [, ofJob] = jobmoney(rows) as unknown[][];
  const [, totals] = lendertotals(rows, ASOF) as unknown[][];
  const [, today] = valuebyday(rows, ASOF, ASOF) as unknown[][];
  const [, peak] = peakvalue(rows) as unknown[][];
  const value = valueout(rows, ASOF);
  // One figure, wherever it is asked for.
  expect([today![2], totals?.[2] ?? 0, valueToday(pieces, ASOF)[0]?.valueOut ?? 0]).toEqual([value, value, value]);
  const isLate = laterows(rows, ASOF).length === 2;
  expect([loans.late.length, totals?.[4] ?? 0]).toEqual(isLate ? [1, 1] : [0, 0]);
  return {
    isLate,
    isDueThisWeek: duerows(rows, ASOF, ASOF + 7).length === 2,
    value,
    peak: peak?.[2] ?? 0,
    rental: ofJob![5],
    depositHeld: ofJob![6],
    tasks: (preparesToday(pieces, null, ASOF) ?? []).flatMap(({ tasks }) => tasks),
    unproved: (unprovedToday(pieces, findings) ?? []).length,
    found: findings.flatMap(({ ruleId }) => (WATCHED.has(ruleId) ? [ruleId] : [])).sort(),
    messages: findings.map(({ message }) => message),
  };
}

const AS_LATE = {
  isLate: true,
  isDueThisWeek: false,
  value: 100,
  peak: 100,
  rental: 10,
  depositHeld: 50,
  tasks: ["undo the alteration (zip let out)", "take the tape off the soles"],
  unproved: 0,
  found: ["alterationNotUndone", "lateNotBack", "tapeNotOff"],
};
const AS_SETTLED = { ...AS_LATE, isLate: false, value: 0, peak: 0, depositHeld: 0, tasks: [], found: [] };
// Back the day before: by then it had been out, so the peak stays.
const AS_BACK = { ...AS_LATE, isLate: false, value: 0, depositHeld: 0, tasks: [] };
const back = { Back: ASOF - 1 };
const AFTER_BACK = ["alterationNotUndone", "depositNotBack", "tapeNotOff"];

test.each<[string, Notes, Partial<typeof AS_LATE>]>([
  ["nothing noted: it is late", {}, AS_LATE],
  [
    "Extended to a later day: no longer late, due then, and nothing to prepare yet",
    { "Extended to": ASOF + 5 },
    { ...AS_LATE, isLate: false, isDueThisWeek: true, tasks: [], found: [] },
  ],
  ["Settled as lost: no longer out, nothing at risk, no deposit waited for", { Settled: "lost" }, AS_SETTLED],
  ["Settled as bought", { Settled: "bought" }, AS_SETTLED],
  ["Settled as gifted", { Settled: "gifted" }, AS_SETTLED],
  ["Settled not yet, which settles nothing", { Settled: "tbc" }, AS_LATE],
  [
    "Back with nothing to show for it: unproved, and the deposit to be asked for",
    back,
    { ...AS_BACK, unproved: 1, found: [...AFTER_BACK, "returnNotProved"].sort() },
  ],
  ["Returned how, by hand", { ...back, "Returned how": "by hand" }, { ...AS_BACK, found: AFTER_BACK }],
  [
    "Returned how, by courier, without a number",
    { ...back, "Returned how": "courier" },
    { ...AS_BACK, unproved: 1, found: [...AFTER_BACK, "returnNotProved"].sort() },
  ],
  [
    "Tracking, beside the courier",
    { ...back, "Returned how": "courier", Tracking: "AB 123" },
    { ...AS_BACK, found: AFTER_BACK },
  ],
  ["Received by", { ...back, "Received by": "Ana, front desk" }, { ...AS_BACK, found: AFTER_BACK }],
  ["Settled and back, which cannot both be", { ...back, Settled: "lost" }, { found: ["settledAndBack"], value: 0 }],
  [
    "Received by, and no day: still out, and said so once",
    { "Received by": "Ana" },
    { ...AS_LATE, found: ["alterationNotUndone", "returnNoDay", "tapeNotOff"] },
  ],
  [
    "Alteration undone",
    { "Alteration undone": "yes" },
    { ...AS_LATE, tasks: ["take the tape off the soles"], found: ["lateNotBack", "tapeNotOff"] },
  ],
  [
    "Tape off",
    { "Tape off": "x" },
    { ...AS_LATE, tasks: ["undo the alteration (zip let out)"], found: ["alterationNotUndone", "lateNotBack"] },
  ],
  ["no Alteration", { Alteration: null }, { tasks: ["take the tape off the soles"] }],
  ["a Rental fee", { "Rental fee": 25 }, { ...AS_LATE, rental: 25 }],
  ["a Deposit", { Deposit: 80 }, { ...AS_LATE, depositHeld: 80 }],
  ["no Deposit on a piece that is back", { ...back, Deposit: null }, { depositHeld: 0, rental: 10 }],
])("%s", async (_, notes, expected) => {
  expect(await standing(notes)).toMatchObject(expected);
});

test("a tracking number on a late piece is named, so that somebody looks whether it arrived", async () => {
  const { found, messages } = await standing({ "Returned how": "courier", Tracking: "AB 123" });
  expect(found).toContain("lateNotBack");
  expect(messages.some((message) => message.includes("though AB 123 is on its way"))).toBe(true);
});
