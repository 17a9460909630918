import fc from "fast-check";
import { lenderTotals } from "../../../src/domain/loans/lenderTotals";
import type { LenderTotal } from "../../../src/domain/loans/lenderTotal";
import type { PieceRow } from "../../../src/domain/loans/pieceRow";
import type { Problem } from "../../../src/domain/problem";
import { anyPieceRows } from "./anyPieceRows";
import { singlePiecesHeld } from "./singlePiecesHeld";
import { pieceRowsOf } from "./pieceRowsOf";

const unread: Problem = { reason: "date-not-understood", facts: { argument: "Due, row 2", given: "soon" } };
const key = (name: string): string =>
  name
    .normalize("NFD")
    .toLowerCase()
    .replace(/[^a-z0-9]/g, "");
const totals = (rows: readonly Partial<PieceRow>[], asOf = 100): readonly LenderTotal[] =>
  lenderTotals(pieceRowsOf(rows), asOf, key);

test("adds pieces and value by lender, with the next due day and what is late", () => {
  // By hand: 2 x 400.10 + 90 = 890.20 out, of which 90 is late by 3 days; the next due day is 104.
  const rows = [
    { lender: "Orla", out: 90, due: 104, value: 400.1, quantity: 2 },
    { lender: "Orla", out: 90, due: 97, value: 90 },
    { lender: "Orla", out: 90, due: 97, value: 1000, back: 100 },
  ];
  expect(totals(rows)).toEqual([
    {
      lender: "Orla",
      piecesOut: 3,
      valueOut: 890.2,
      nextDue: 104,
      latePieces: 1,
      lateValue: 90,
      mostDaysLate: 3,
      piecesWithoutDue: 0,
      piecesWithoutValue: 0,
      currency: null,
    },
  ]);
});

test("a lender with nothing out is left out", () => {
  expect(
    totals([
      { lender: "Orla", out: 90, back: 95 },
      { lender: "Ada", out: 101 },
      { lender: "Bo", out: 90, settled: true },
    ]),
  ).toEqual([]);
});

test("most days late first, then most value, then first seen, and no lender last", () => {
  const rows = [
    { out: 90, due: 10, value: 9999 },
    { lender: "B", out: 90, value: 5 },
    { lender: "C", out: 90, value: 5 },
    { lender: "D", out: 90, value: 7 },
    { lender: "E", out: 90, value: 1, due: 99 },
  ];
  expect(totals(rows).map(({ lender }) => lender)).toEqual(["E", "D", "B", "C", null]);
});

test("spellings with one key are one lender, shown as first spelled", () => {
  const rows = [
    { lender: "Maison Orla", out: 90, value: 1 },
    { lender: "MAISON-ORLA", out: 90, value: 2 },
    { lender: "Maison Ola", out: 90, value: 4 },
  ];
  expect(totals(rows).map(({ lender, valueOut }) => [lender, valueOut])).toEqual([
    ["Maison Ola", 4],
    ["Maison Orla", 3],
  ]);
});

test("names of punctuation alone have no key, and are neither one lender nor no lender", () => {
  const rows = [{ lender: "?", out: 90 }, { lender: "!!", out: 90 }, { out: 90 }];
  expect(totals(rows).map(({ lender }) => lender)).toEqual(["?", "!!", null]);
});

test("each currency has its own row and they are never added", () => {
  const rows = [
    { lender: "Orla", out: 90, value: 1, currency: "GBP" },
    { lender: "Orla", out: 90, value: 2, currency: "EUR" },
    { lender: "Orla", out: 90, value: 4, currency: "GBP" },
    { lender: "Orla", out: 90, value: 8, currency: null },
  ];
  expect(totals(rows).map(({ currency, valueOut }) => [currency, valueOut])).toEqual([
    [null, 8],
    ["GBP", 5],
    ["EUR", 2],
  ]);
});

test("pieces without a due day and without a value are counted, in pieces", () => {
  expect(totals([{ lender: "Orla", out: 90, quantity: 3 }])[0]).toMatchObject({
    piecesWithoutDue: 3,
    piecesWithoutValue: 3,
    nextDue: null,
    valueOut: 0,
    mostDaysLate: 0,
  });
});

test("a due day that cannot be read spoils what depends on it and nothing else", () => {
  const rows = [
    { lender: "Orla", out: 90, due: unread, value: 5 },
    { lender: "Ada", out: 90, due: 99, value: 5 },
  ];
  expect(totals(rows)).toEqual([
    expect.objectContaining({ lender: "Ada", latePieces: 1 }),
    expect.objectContaining({
      lender: "Orla",
      piecesOut: 1,
      valueOut: 5,
      nextDue: unread,
      latePieces: unread,
      lateValue: unread,
      mostDaysLate: unread,
      piecesWithoutDue: 0,
    }),
  ]);
});

test("a value that cannot be read spoils the value, and the late value only where the piece is late", () => {
  expect(totals([{ lender: "Orla", out: 90, due: 101, value: unread }])[0]).toMatchObject({
    valueOut: unread,
    lateValue: 0,
    piecesWithoutValue: 0,
  });
  expect(totals([{ lender: "Orla", out: 90, due: 99, value: unread }])[0]).toMatchObject({
    valueOut: unread,
    lateValue: unread,
    latePieces: 1,
  });
});

test("a back day that cannot be read spoils every figure of its lender", () => {
  expect(totals([{ lender: "Orla", out: 90, due: 99, back: unread }])[0]).toEqual({
    lender: "Orla",
    piecesOut: unread,
    valueOut: unread,
    nextDue: unread,
    latePieces: unread,
    lateValue: unread,
    mostDaysLate: unread,
    piecesWithoutDue: unread,
    piecesWithoutValue: unread,
    currency: null,
  });
});

test("pieces whose lender cannot be read are a row of their own, before those with none", () => {
  expect(
    totals([{ out: 90 }, { lender: unread, out: 90 }, { lender: "Orla", out: 90 }]).map(({ lender }) => lender),
  ).toEqual(["Orla", unread, null]);
});

test("100,000 amounts that are no binary fractions add up to the cent", () => {
  const pieces = {
    count: 100_000,
    at: () => pieceRowsOf([{ lender: "Orla", out: 90, value: 0.1, quantity: 3 }]).at(0),
    hasCurrencies: false,
  };
  expect(lenderTotals(pieces, 100, key)[0]!.valueOut).toBe(30_000);
});

test("agrees with single pieces followed day by day", () => {
  fc.assert(
    fc.property(anyPieceRows, fc.integer({ min: 99, max: 116 }), (rows, asOf) => {
      const held = singlePiecesHeld(rows, asOf, false);
      const groups = [...new Set(held.map(({ lender, currency }) => `${key(lender)}|${currency}`))].map((group) => {
        const own = held.filter(({ lender, currency }) => `${key(lender)}|${currency}` === group);
        const late = own.filter(({ due }) => due !== null && due < asOf);
        const coming = own.flatMap(({ due }) => (due !== null && due >= asOf ? [due] : []));
        const centsOf = (pieces: typeof own) => pieces.reduce((sum, { cents }) => sum + (cents ?? 0), 0);
        return {
          total: {
            lender: own[0]!.lender || null,
            piecesOut: own.length,
            valueOut: centsOf(own) / 100,
            nextDue: coming.length === 0 ? null : Math.min(...coming),
            latePieces: late.length,
            lateValue: centsOf(late) / 100,
            mostDaysLate: Math.max(0, ...late.map(({ due }) => asOf - due!)),
            piecesWithoutDue: own.filter(({ due }) => due === null).length,
            piecesWithoutValue: own.filter(({ cents }) => cents === null).length,
            currency: own[0]!.currency || null,
          },
          seen: held.indexOf(own[0]!),
        };
      });
      groups.sort((a, b) => {
        if ((a.total.lender === null) !== (b.total.lender === null)) return a.total.lender === null ? 1 : -1;
        if (a.total.mostDaysLate !== b.total.mostDaysLate) return b.total.mostDaysLate - a.total.mostDaysLate;
        return a.total.valueOut !== b.total.valueOut ? b.total.valueOut - a.total.valueOut : a.seen - b.seen;
      });
      expect(totals(rows, asOf)).toEqual(groups.map(({ total }) => total));
    }),
  );
});
