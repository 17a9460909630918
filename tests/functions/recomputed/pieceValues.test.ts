// VALUEOUT, VALUEBYDAY, PEAKVALUE and COVERGAP worked out a second time, day by day, from what their documentation promises.
import fc from "fast-check";
import { standInHost } from "../standInHost";
import { drawnFrom, type Drawn } from "./drawn";
import { messyPieces, type MessyPieces } from "./messyPieces";
import { heldOn } from "./pieceFacts";
import { resultOf } from "./resultOf";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost()));
afterAll(() => takeAway());

const FROM = 46_100;
/** Nothing is out before the first of these days, and all that comes back is back by the last. */
const ALL_DAYS = Array.from({ length: 80 }, (_, index) => FROM - 20 + index);

function forSheets(holds: (sheet: MessyPieces, draw: Drawn) => void): void {
  fc.assert(
    fc.property(fc.gen(), (value) => {
      const draw = drawnFrom(value);
      holds(messyPieces(draw, FROM), draw);
    }),
    // Making a whole sheet smaller takes minutes; the one that failed is shown as it is.
    { numRuns: 120, endOnFailure: true },
  );
}

function onDay(
  sheet: MessyPieces,
  day: number,
  countsBackDay: boolean,
): readonly [pieces: number, cents: number, unvalued: number] {
  let [pieces, cents, unvalued] = [0, 0, 0];
  for (const piece of sheet.meant) {
    const held = heldOn(piece, day, countsBackDay);
    pieces += held;
    cents += held * (piece.valueCents ?? 0);
    if (piece.valueCents === null) unvalued += held;
  }
  return [pieces, cents, unvalued];
}

test("VALUEOUT: what is held at the close of the day, or with the back day counted", () => {
  forSheets((sheet, draw) => {
    const [day, countsBackDay] = [FROM + draw.whole(-10, 20), draw.one([true, false])];
    expect(resultOf("VALUEOUT", sheet.cells, day, null, countsBackDay)).toBe(onDay(sheet, day, countsBackDay)[1] / 100);
  });
});

test("VALUEBYDAY: the same, each day of a span", () => {
  forSheets((sheet, draw) => {
    const [from, countsBackDay] = [FROM + draw.whole(-10, 10), draw.one([true, false])];
    const days = Array.from({ length: draw.whole(1, 12) }, (_, index) => from + index);
    const rows = days.map((day) => {
      const [pieces, cents, unvalued] = onDay(sheet, day, countsBackDay);
      return [day, pieces, cents / 100, unvalued];
    });
    expect(resultOf("VALUEBYDAY", sheet.cells, from, days.at(-1), null, countsBackDay)).toEqual([
      ["Date", "Pieces", "Value", "Unvalued"],
      ...rows,
    ]);
  });
});

test("PEAKVALUE: the first of the days with most value", () => {
  forSheets((sheet, draw) => {
    const countsBackDay = draw.one([true, false]);
    const days = ALL_DAYS.map((day) => [day, ...onDay(sheet, day, countsBackDay)] as const).filter(
      ([, pieces]) => pieces > 0,
    );
    const most = Math.max(...days.map(([, , cents]) => cents));
    const rows = days.filter(([, , cents]) => cents === most).slice(0, 1);
    expect(resultOf("PEAKVALUE", sheet.cells, null, countsBackDay)).toEqual([
      ["Date", "Pieces", "Value"],
      ...rows.map(([day, pieces, cents]) => [day, pieces, cents / 100]),
    ]);
  });
});

test("COVERGAP: unbroken spans of days over the limit with their highest value, then single pieces over theirs", () => {
  forSheets((sheet, draw) => {
    const [limit, pieceLimit] = [draw.whole(500, 8000), draw.whole(500, 2500)];
    const spans: [what: string, from: number, until: number | "", value: number, over: number][] = [];
    let wasOver = false;
    for (const day of ALL_DAYS) {
      const value = onDay(sheet, day, true)[1] / 100;
      const isOver = value > limit;
      if (isOver && !wasOver) spans.push(["All pieces", day, day, 0, 0]);
      const span = spans.at(-1);
      if (isOver && span !== undefined) {
        span[2] = day;
        span[3] = Math.max(span[3], value);
      }
      wasOver = isOver;
    }
    if (wasOver) spans.at(-1)![2] = "";
    const single = sheet.meant.filter(
      (piece) => piece.out !== null && piece.settled === null && (piece.valueCents ?? 0) / 100 > pieceLimit,
    );
    const rows = single.map((piece) => {
      const isAllBack = piece.back !== null && heldOn(piece, piece.back) === 0;
      return [
        piece.piece,
        piece.out,
        isAllBack ? piece.back : "",
        piece.valueCents! / 100,
        expect.closeTo(piece.valueCents! / 100 - pieceLimit, 6),
      ];
    });
    expect(resultOf("COVERGAP", sheet.cells, limit, pieceLimit)).toEqual([
      ["What", "From", "Until", "Value", "Over by"],
      ...spans.map(([what, from, until, value]) => [what, from, until, value, expect.closeTo(value - limit, 6)]),
      ...rows,
    ]);
  });
});
