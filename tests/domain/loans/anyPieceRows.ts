import fc from "fast-check";
import type { PieceRow } from "../../../src/domain/loans/pieceRow";
import { pieceRowOf } from "./pieceRowOf";

const day = fc.integer({ min: 100, max: 115 });
const blankOr = <T>(arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.option(arbitrary, { freq: 3 });

/** Readable rows close together in time, so that due, late, back and held all occur; values in whole cents. */
export const anyPieceRows: fc.Arbitrary<readonly PieceRow[]> = fc
  .array(
    fc.record({
      lender: blankOr(fc.constantFrom("Maison Orla", "MAISON  ORLA", "Máison-Orla", "Rail & Co", "Ada")),
      currency: blankOr(fc.constantFrom("GBP", "EUR")),
      quantity: blankOr(fc.integer({ min: 0, max: 4 })),
      quantityBack: blankOr(fc.integer({ min: 0, max: 5 })),
      value: blankOr(fc.integer({ min: 0, max: 999_999 }).map((cents) => cents / 100)),
      out: blankOr(day),
      due: blankOr(day),
      extendedTo: fc.option(day, { freq: 1 }),
      back: fc.option(day, { freq: 1 }),
      settled: fc.constantFrom(null, null, null, false, true),
    }),
    { maxLength: 25 },
  )
  .map((rows) => rows.map((fields, index) => pieceRowOf({ ...fields, row: index + 1 })));
