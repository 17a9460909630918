// What other people's workbooks rest on: the arguments of each function in their order, and the headings of each table it gives. Hosts keep
// the old metadata for about a day, and formulas name columns of results, so neither may change; an argument may be added at the end.
import { functionDocs } from "../../src/build/functionDocs.mjs";
import { outcomeOf } from "./outcomeOf";
import { standInHost } from "./standInHost";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost()));
afterAll(() => takeAway());

const ARGUMENTS = `
BAGS(rows, limit, [unit], [columns])
CARRIED(rows, [unit], [columns])
CHANGETIME(wearing, next, [minutesByKind])
CHASEROWS(rows, asOf, [patience], [closed], [weekend], [columns])
CLASHES(pieces, looks, [columns])
COVERGAP(rows, limit, [pieceLimit], [columns])
DAYCHANCE(looks, call, wrap, [people], [changes], [columns], [runs], [seed])
DAYFIT(looks, call, wrap, [people], [changes], [columns])
DAYPLAN(looks, call, [people], [changes], [columns])
DAYSLATE(due, back, asOf, [grace], [counting], [closed], [weekend])
DAYSOUT(out, back, asOf, [counting], [closed], [weekend])
DUE(out, terms, [shoot], [closed], [weekend], [roll])
DUEROWS(rows, from, to, [columns])
HOLIDAYS(country, from, to)
JOBMONEY(rows, [columns])
KEEPCOST(taken, kept, [keepShare], [restockShare])
LATEFEE(value, daysLate, fee, [cap])
LATEROWS(rows, asOf, [columns])
LENDERTOTALS(rows, asOf, [columns])
LIFTINDEX(load, horizontal, vertical, travel, angle, liftsPerMinute, hours, grip, [unit])
LIFTLIMIT(horizontal, vertical, travel, angle, liftsPerMinute, hours, grip, [unit])
LOANSTATE(out, due, back, asOf, [warn], [settled])
LOOKORDER(looks, call, [people], [changes], [columns])
MEALBY(call, hours, [lastMeal])
NEXTLOOK(looks, now, call, [people], [changes], [columns])
PARCELWEIGHT(length, width, height, weight, divisor, [roundUp])
PEAKVALUE(rows, [columns], [countBackDay])
REFUNDS(rows, asOf, [columns])
RUNCOST(date, distance, scheme, [soFarThisYear])
RUNORDER(stops, [minutesBetween], [leaveAt], [returnToStart], [columns], [kmPerHour], [detour])
SENDBY(due, transit, [prep], [closed], [weekend])
SHOESIZE(size, from, to)
SHORTAGES(rows, [columns])
TAPE(rows, [columns], [tapeWidth], [overlap], [sizeSystem])
VALUEBYDAY(rows, from, to, [columns], [countBackDay])
VALUEOUT(rows, onDate, [columns], [countBackDay])
WEIGHTS(rows, [unit], [columns])`
  .trim()
  .split("\n");

const docs = functionDocs();

test.each(ARGUMENTS)("%s", (promised) => {
  const [id, names] = promised.slice(0, -1).split("(") as [string, string];
  const doc = docs.find((each) => each.id === id)!;
  const taken = doc.params.map(({ name, optional }) => (optional ? `[${name}]` : name));
  const count = names.split(", ").length;
  expect(taken.slice(0, count).join(", ")).toBe(names);
  expect(doc.params.slice(count).every(({ optional }) => optional)).toBe(true);
});

test("every function's arguments are promised", () => {
  expect(ARGUMENTS.map((line) => line.split("(")[0])).toEqual(docs.map(({ id }) => id).sort());
});

const PIECES = [
  "Piece",
  "Kind",
  "Lender",
  "Value",
  "Weight",
  "Quantity",
  "Out",
  "Due",
  "Back",
  "Quantity back",
  "Look",
];
const LOOKS = ["Look", "Talent", "Change", "Shooting"];
const REQUESTS = ["Lender", "Asked", "Needed by", "Answer"];
const RECEIPTS = ["Job", "Shop", "Bought", "Amount", "Terms"];
const DAY = 46_083;
const PLAN = "Look|Talent|Change from|Ready by|Shoot from|Shoot until|Waits for|Spare";

const HEADINGS = [
  ["LATEROWS", [[PIECES], DAY], [...PIECES, "Days late"].join("|")],
  ["DUEROWS", [[PIECES], DAY, DAY], PIECES.join("|")],
  [
    "LENDERTOTALS",
    [[PIECES], DAY],
    "Lender|Pieces out|Value out|Next due|Late pieces|Late value|Most days late|No due date|Unvalued",
  ],
  ["CHASEROWS", [[REQUESTS], DAY], REQUESTS.join("|")],
  ["SHORTAGES", [[PIECES]], [...PIECES, "Missing", "Damaged", "Value missing"].join("|")],
  ["VALUEBYDAY", [[PIECES], DAY, DAY], "Date|Pieces|Value|Unvalued"],
  ["PEAKVALUE", [[PIECES]], "Date|Pieces|Value"],
  ["COVERGAP", [[PIECES], 1000, 500], "What|From|Until|Value|Over by"],
  ["REFUNDS", [[RECEIPTS], DAY], "Shop|Refund by|Days left|To come back"],
  ["JOBMONEY", [[RECEIPTS]], "Job|Spent|Kept|Refunded|To come back|Rental|Deposits held"],
  ["WEIGHTS", [[PIECES]], "Kind|Pieces|Weight|Weighed|Estimated"],
  ["BAGS", [[PIECES], 10], "Piece|Weight|Bag"],
  ["RUNORDER", [[["Stop", "Open", "Close", "Minutes"]], null, 0.375], "Stop|Arrive|Wait|Leave"],
  ["TAPE", [[["Shoes", "Size", "Where"]]], "Shoes|Layers|Painter's tape|Gaffer tape"],
  ["DAYPLAN", [[LOOKS], 0.375], PLAN],
  ["LOOKORDER", [[LOOKS], 0.375], PLAN],
  ["NEXTLOOK", [[LOOKS], 0.4, 0.375], "Look|Talent|Change from|Minutes"],
  ["CLASHES", [[PIECES], [LOOKS]], "Piece|Look|Other look|Why"],
  ["HOLIDAYS", ["Scotland", "2026-03-02", "2026-03-03"], "Date|Holiday"],
] as const;

test.each(HEADINGS)("%s gives its headings, whatever stands below them", (id, args, headings) => {
  const outcome = outcomeOf(id.toLowerCase(), args);
  if ("error" in outcome) throw new Error(outcome.error.message);
  expect((outcome.result as unknown[][])[0]).toEqual(headings.split("|"));
});

test("every table's headings are promised", () => {
  const tables = docs.filter(({ returnsTable }) => returnsTable).map(({ id }) => id);
  expect(HEADINGS.map(([id]) => id).sort()).toEqual(tables.sort());
});
