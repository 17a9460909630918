import { isProblem } from "../../src/domain/isProblem";
import { sayProblem } from "../../src/domain/wording";
import { readLenders } from "../../src/sheet/readLenders";
import { readTable } from "../../src/sheet/readTable";

function lenders(...rows: readonly (readonly unknown[])[]): ReturnType<typeof readLenders> {
  const headings = [
    "Lender",
    "Kind",
    "Terms",
    "Closed weekdays",
    "Courier days",
    "Open",
    "Close",
    "Cut-off",
    "Receives until",
  ];
  const cells = [headings, ...rows.map((row) => [...row, ...Array<null>(headings.length - row.length).fill(null)])];
  const table = readTable({ cells, kind: "lenders", needs: ["lender"] });
  if (!table.ok) throw new Error(sayProblem(table.problem));
  return readLenders(table.value);
}

test("reads every field of a lender", () => {
  expect(
    lenders(["Maison Orla", "Press office", "3 working days", "Sun, Mon", 2, "10-13, 14-18", null, "15:00", 0.75]),
  ).toEqual([
    {
      row: 1,
      lender: "Maison Orla",
      kind: "Press office",
      contact: null,
      address: null,
      terms: { kind: "working days", count: 3, from: "out" },
      closedWeekdays: 0b1000001,
      courierDays: 2,
      opening: [
        { from: 10 / 24, until: 13 / 24 },
        { from: 14 / 24, until: 18 / 24 },
      ],
      cutOff: 15 / 24,
      receivesUntil: 0.75,
    },
  ]);
});

test("blanks and the 0 some hosts send for them are null, and 0 courier days are none", () => {
  const [blank] = lenders(["Halden", null, null, null, null, null, null]);
  expect(blank).toMatchObject({ terms: null, closedWeekdays: null, courierDays: null, opening: null, cutOff: null });
  const [zeros] = lenders(["Halden", 0, 0, 0, 0, 0, 0]);
  expect(zeros).toMatchObject({ terms: null, closedWeekdays: null, courierDays: 0, opening: null });
});

test.each([
  [2, 2],
  ["2 days", 2],
  ["next day", 1],
  ["overnight", 1],
  ["same day", 0],
])("%p courier days are %p", (typed, expected) => {
  expect(lenders(["Halden", null, null, null, typed])[0]!.courierDays).toBe(expected);
});

test("a cell that cannot be read is a problem that names its heading and row, and the other fields survive", () => {
  const [lender] = lenders(["Halden", "Showroom", "soonish", "whenever", 1.5, "10:00", "18:00"]);
  expect(lender).toMatchObject({ lender: "Halden", opening: [{ from: 10 / 24, until: 0.75 }] });
  for (const [field, heading] of [
    [lender!.terms, "Terms, row 2"],
    [lender!.closedWeekdays, "Closed weekdays, row 2"],
    [lender!.courierDays, "Courier days, row 2"],
  ] as const) {
    expect(isProblem(field) && sayProblem(field)).toMatch(new RegExp(`^${heading}`));
  }
});
