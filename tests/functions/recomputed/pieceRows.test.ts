// LATEROWS, DUEROWS, SHORTAGES and LENDERTOTALS worked out a second time, row by row, from what their documentation promises.
import fc from "fast-check";
import { standInHost } from "../standInHost";
import { asShown } from "./asShown";
import { drawnFrom } from "./drawn";
import { messyPieces, type MeantPiece, type MessyPieces } from "./messyPieces";
import { dueOf, heldOn, quantityOf } from "./pieceFacts";
import { resultOf } from "./resultOf";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost()));
afterAll(() => takeAway());

const FROM = 46_100;

function forSheets(holds: (sheet: MessyPieces, day: number, later: number) => void): void {
  fc.assert(
    fc.property(fc.gen(), (value) => {
      const draw = drawnFrom(value);
      const day = FROM + draw.whole(-5, 25);
      holds(messyPieces(draw, FROM), day, day + draw.whole(0, 15));
    }),
    // Making a whole sheet smaller takes minutes; the one that failed is shown as it is.
    { numRuns: 150, endOnFailure: true },
  );
}

/** Places of the rows that pass, in the order wanted; equal ones stay in the order of the sheet. */
function placesOf(
  sheet: MessyPieces,
  isListed: (piece: MeantPiece) => boolean,
  ...keys: readonly ((piece: MeantPiece) => number)[]
): number[] {
  const places = sheet.meant.flatMap((piece, place) => (isListed(piece) ? [place] : []));
  const differenceOf = (a: number, b: number): number => {
    for (const key of keys) {
      const difference = key(sheet.meant[a]!) - key(sheet.meant[b]!);
      if (difference !== 0) return difference;
    }
    return a - b;
  };
  return places.sort(differenceOf);
}

test("LATEROWS: out, due before the day, not all back; most late first, then most valuable", () => {
  forSheets((sheet, day) => {
    const places = placesOf(
      sheet,
      (piece) => heldOn(piece, day) > 0 && (dueOf(piece) ?? day) < day,
      (piece) => dueOf(piece)!,
      (piece) => -(piece.valueCents ?? 0) * heldOn(piece, day),
    );
    const rows = places.map((place) => [...sheet.typed[place]!, day - dueOf(sheet.meant[place]!)!]);
    expect(resultOf("LATEROWS", sheet.cells, day)).toEqual([[...sheet.headings, "Days late"], ...asShown(rows)]);
  });
});

test("DUEROWS: due in the span, both ends counted, and not all back by its end; soonest first", () => {
  forSheets((sheet, day, later) => {
    const places = placesOf(
      sheet,
      (piece) => {
        const due = dueOf(piece);
        const isOut = piece.out !== null && piece.settled === null;
        const isBack = piece.back !== null && piece.back <= later;
        const left = isBack ? (piece.quantityBack === null ? 0 : quantityOf(piece) - piece.quantityBack) : 1;
        return due !== null && due >= day && due <= later && isOut && left > 0;
      },
      (piece) => dueOf(piece)!,
    );
    expect(resultOf("DUEROWS", sheet.cells, day, later)).toEqual([
      sheet.headings,
      ...asShown(places.map((place) => sheet.typed[place]!)),
    ]);
  });
});

test("SHORTAGES: back with fewer than went out, or in another condition that is no way of saying good", () => {
  forSheets((sheet) => {
    const listed = sheet.meant.flatMap((piece, place) => {
      if (piece.back === null || piece.settled !== null) return [];
      const missing = piece.quantityBack === null ? 0 : quantityOf(piece) - piece.quantityBack;
      const condition = piece.conditionBack?.toLowerCase();
      const isDamaged =
        condition === "torn hem" || (condition === "small mark on hem" && !piece.conditionOut?.startsWith("small"));
      if (missing === 0 && !isDamaged) return [];
      const worth = missing === 0 ? 0 : piece.valueCents === null ? "" : (missing * piece.valueCents) / 100;
      return [[...asShown([sheet.typed[place]!])[0]!, missing, isDamaged, worth]];
    });
    expect(resultOf("SHORTAGES", sheet.cells)).toEqual([
      [...sheet.headings, "Missing", "Damaged", "Value missing"],
      ...listed,
    ]);
  });
});

test("LENDERTOTALS: what each lender has out; most days late first, then most value, then first seen, no lender last", () => {
  forSheets((sheet, day) => {
    const names = [...new Set(sheet.meant.filter((piece) => heldOn(piece, day) > 0).map((piece) => piece.lender))];
    const rows = names.map((name) => {
      const held = sheet.meant.filter((piece) => piece.lender === name && heldOn(piece, day) > 0);
      const late = held.filter((piece) => (dueOf(piece) ?? day) < day);
      const pieces = (some: readonly MeantPiece[]): number => some.reduce((sum, piece) => sum + heldOn(piece, day), 0);
      const worth = (some: readonly MeantPiece[]): number =>
        some.reduce((sum, piece) => sum + heldOn(piece, day) * (piece.valueCents ?? 0), 0) / 100;
      const next = held.flatMap((piece) => dueOf(piece) ?? []).filter((due) => due >= day);
      const mostLate = late.reduce((most, piece) => Math.max(most, day - dueOf(piece)!), 0);
      const noDue = pieces(held.filter((piece) => dueOf(piece) === null));
      const unvalued = pieces(held.filter((piece) => piece.valueCents === null));
      const nextDue = next.length === 0 ? "" : Math.min(...next);
      return [name, pieces(held), worth(held), nextDue, pieces(late), worth(late), mostLate, noDue, unvalued] as const;
    });
    rows.sort((a, b) => Number(a[0] === null) - Number(b[0] === null) || b[6] - a[6] || b[2] - a[2]);
    const [headings, ...totals] = resultOf("LENDERTOTALS", sheet.cells, day) as unknown[][];
    expect(headings).toEqual(
      "Lender|Pieces out|Value out|Next due|Late pieces|Late value|Most days late|No due date|Unvalued".split("|"),
    );
    // The name stands as one of its spellings.
    const plain = (name: unknown): string =>
      String(name)
        .toLowerCase()
        .replace("í", "i")
        .replace(/[^a-z]/g, "");
    expect(totals.map(([name, ...figures]) => [plain(name), ...figures])).toEqual(
      rows.map(([name, ...figures]) => [plain(name ?? "no lender"), ...figures]),
    );
  });
});
