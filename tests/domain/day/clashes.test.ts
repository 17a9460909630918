import { clashes } from "../../../src/domain/day/clashes";
import type { NeededPiece } from "../../../src/domain/day/neededPiece";
import { isProblem } from "../../../src/domain/isProblem";
import type { PieceRow } from "../../../src/domain/loans/pieceRow";
import { pieceRowOf } from "../loans/pieceRowOf";
import { datedDays } from "./datedDays";
import { sampleLook } from "./sampleLook";

const DAY = 46109; // 2026-03-28

function piece(looks: string, fields: Partial<PieceRow> = {}): NeededPiece {
  const named = looks.split(" ").map((name) => ({ name, key: name }));
  return { row: pieceRowOf({ piece: "P1", out: DAY - 5, ...fields }), looks: named };
}

const days = datedDays([
  sampleLook(1, { talents: ["Mina"], changeMinutes: 10, shootingMinutes: 30, date: DAY }),
  sampleLook(2, { talents: ["Teo"], changeMinutes: 10, shootingMinutes: 30, date: DAY }),
  sampleLook(3, { talents: ["Mina"], changeMinutes: 10, shootingMinutes: 30, date: DAY }),
  sampleLook(4, { talents: ["Mina"], changeMinutes: 10, shootingMinutes: 30 }),
  sampleLook(5, { talents: ["Teo"], changeMinutes: 10, shootingMinutes: 30 }),
]);

function clashesOf(needed: NeededPiece, planned = days) {
  return clashes({ count: 1, at: () => needed, isBorrowed: ({ lender }) => lender !== "own" }, planned);
}

function said(needed: NeededPiece): string[] {
  return clashesOf(needed).map(({ piece: name, look, otherLook, why }) =>
    [name, look, otherLook ?? "-", isProblem(why) ? `! ${why.reason}` : why].join(" | "),
  );
}

test.each([
  [
    "two looks at once name each other",
    piece("1 2"),
    ["P1 | 1 | 2 | look 2 needs it 30 minutes before look 1 is done"],
  ],
  ["looks that do not overlap do not clash, whatever their numbers", piece("3 1"), []],
  ["with two of it two looks may overlap", piece("1 2", { quantity: 2 }), []],
  [
    "a piece that goes out later",
    piece("1", { out: DAY + 2 }),
    ["P1 | 1 | - | out only 2026-03-30, needed 2026-03-28"],
  ],
  ["a piece that is back on the day", piece("1", { back: DAY }), ["P1 | 1 | - | back 2026-03-28, needed 2026-03-28"]],
  ["a borrowed piece without an out day", piece("1", { out: null }), ["P1 | 1 | - | not out, needed 2026-03-28"]],
  ["the stylist's own needs none", piece("1", { out: null, lender: "own" }), []],
  [
    "one row for each look that cannot have it, then those at once",
    piece("1 2", { back: DAY - 1 }),
    [
      "P1 | 1 | - | back 2026-03-27, needed 2026-03-28",
      "P1 | 2 | - | back 2026-03-27, needed 2026-03-28",
      "P1 | 1 | 2 | look 2 needs it 30 minutes before look 1 is done",
    ],
  ],
  [
    "a look without a date is shot on the piece's shoot day",
    piece("4", { back: DAY, shoot: DAY }),
    ["P1 | 4 | - | back 2026-03-28, needed 2026-03-28"],
  ],
  [
    "the look's own date goes before it",
    piece("1", { back: DAY, shoot: DAY - 1 }),
    ["P1 | 1 | - | back 2026-03-28, needed 2026-03-28"],
  ],
  [
    "with neither only what overlaps is told",
    piece("4 5", { back: DAY }),
    ["P1 | 4 | 5 | look 5 needs it 30 minutes before look 4 is done"],
  ],
  [
    "a look that no table lists counts by the shoot day",
    piece("9", { out: DAY + 1, shoot: DAY }),
    ["P1 | 9 | - | out only 2026-03-29, needed 2026-03-28"],
  ],
  [
    "a piece without a number is named by its description",
    piece("1", { piece: null, description: "Silk slip", out: null }),
    ["Silk slip | 1 | - | not out, needed 2026-03-28"],
  ],
] as const)("%s", (_, needed, rows) => {
  expect(said(needed)).toEqual(rows);
});

test("a minute is said as one, and parts of one are rounded up", () => {
  const two = datedDays([
    sampleLook(1, { talents: ["Mina"], changeMinutes: 10, shootingMinutes: 0.5 }),
    sampleLook(2, { talents: ["Teo"], changeMinutes: 10, shootingMinutes: 30 }),
  ]);
  expect(clashesOf(piece("1 2"), two)[0]!.why).toBe("look 2 needs it 1 minute before look 1 is done");
});

test("a cell that matters and cannot be read is the reason, and one that does not is passed over", () => {
  const bad = { reason: "error-in-cell", facts: { argument: "x", given: "#N/A" } } as const;
  expect(said(piece("1", { out: bad }))).toEqual(["P1 | 1 | - | ! error-in-cell"]);
  expect(said(piece("4", { shoot: bad }))).toEqual(["P1 | 4 | - | ! error-in-cell"]);
  expect(said(piece("1", { shoot: bad }))).toEqual([]);
  expect(said(piece("1 2", { quantity: bad }))).toContain("P1 | 1 | 2 | ! error-in-cell");
  expect(clashesOf({ ...piece("1"), row: pieceRowOf({ piece: "P1", look: bad }) })).toEqual([
    { piece: "P1", look: bad, otherLook: null, why: bad },
  ]);
});
