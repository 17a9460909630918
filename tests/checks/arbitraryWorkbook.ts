import fc from "fast-check";
import type { Cell } from "../../src/sheet/cell";
import type { TableKind } from "../../src/sheet/tableKind";
import { day } from "./day";
import type { Sample } from "./workbookOf";

/** What stylists type, right and wrong, so that every rule has something to look at. */
const cell: fc.Arbitrary<Cell> = fc.oneof(
  { arbitrary: fc.constant<Cell>(null), weight: 4 },
  { arbitrary: fc.integer({ min: day("2026-02-20"), max: day("2026-03-20") }), weight: 6 },
  fc.constantFrom<Cell>(0, 1, 2, 3, -1, 12, 900, 0.25, 15 / 1440, 2.5, 1e9, 99_999_999, true, false),
  fc.constantFrom<Cell>("P1", "P2", "look 3", "3, 7", "1-3", "3 & 1", "7a", "all", "spare", "tbc", "?", "-", ""),
  fc.constantFrom<Cell>("Maison Orla", "Maison Ola", "maison orla", " Maison  Orla ", "Orla", "Halden", "Ado", "Ada"),
  fc.constantFrom<Cell>(
    "2026-03-05",
    "03/04/26",
    "5 Mar 2026",
    "Mon 5 Mar 2026",
    "next week",
    "25/12/2026",
    "1930-03-05",
  ),
  fc.constantFrom<Cell>(
    "7 days",
    "3 working days",
    "5 working days after shoot",
    "7-10 days",
    "by 03/04/26",
    "soonish",
  ),
  fc.constantFrom<Cell>("£1,250.00", "1.250,00 €", "EUR", "GBP", "GPB", "$95", "(95)", "-5", "2 pcs", "ask"),
  fc.constantFrom<Cell>("1.2 kg", "800 g", "1,250", "15 min", "0:15", "1h30", "Ana", "Bo & Cy", "shoes", "red dress"),
  fc.constantFrom<Cell>("Sun, Mon", "0000011", "by appointment", "10-13, 14-18", "first", "shop", "2 missing", "lost"),
  fc.constantFrom<Cell>({ error: "#N/A" }, { error: "#VALUE!" }),
  fc.string({ maxLength: 8 }),
  fc.double(),
);

const HEADINGS: Readonly<Record<string, readonly string[]>> = {
  pieces:
    "Piece|Kind|Lender|Job|Quantity|Value|Total value|Currency|Weight|Out|Due|Terms|Shoot|Back|Quantity back|Condition back|Look|Talent|Extended to|Settled|Note|Bag".split(
      "|",
    ),
  lenders: "Lender|Kind|Open|Close|Closed weekdays|Terms|Courier days|Cut off|Receives until".split("|"),
  looks:
    "Look|Order|Talent|Set|Change|Hair and make-up|Shooting|Low|Likely|High|Arrives|After|Fixed|Date|Pieces|Shot at".split(
      "|",
    ),
  requests: "Lender|Asked|Wanted|Needed by|Answer|Answered".split("|"),
  receipts: "Shop|Bought|Amount|Terms|Refunded|Amount refunded|Currency".split("|"),
  day: "Date|Call|Wrap|Dressers|Chairs".split("|"),
  stops: "Stop|Open|Close|Minutes|Due".split("|"),
};

const FORMULAS = ["=TACK.DUE(J2,L2)", "=B3", "=Pieces[[#This Row],[Out]]+7", '=TEXT([@Out],"yyyy")', "=1/0"];

/** A workbook of any cells, some of them formulas' results. */
export const arbitrarySample: fc.Arbitrary<Sample> = fc
  .record(
    {
      tables: fc.record(
        Object.fromEntries(
          Object.entries(HEADINGS).map(([kind, headings]) => [
            kind,
            fc
              .tuple(
                fc.subarray([...headings], { minLength: 1 }),
                fc.array(fc.array(cell, { minLength: headings.length, maxLength: headings.length }), { maxLength: 6 }),
              )
              .map(([chosen, rows]) => [chosen, ...rows.map((row) => row.slice(0, chosen.length))]),
          ]),
        ),
        { requiredKeys: [] },
      ) as fc.Arbitrary<Partial<Record<TableKind, readonly (readonly Cell[])[]>>>,
      formulas: fc.constant({}),
      dateSystem: fc.constantFrom(1900 as const, 1900 as const, 1904 as const),
    },
    { requiredKeys: ["tables", "formulas", "dateSystem"] },
  )
  .chain((sample) => {
    const places = Object.entries(sample.tables).flatMap(([kind, rows]) =>
      (rows ?? [])
        .slice(1)
        .flatMap((row, index) => row.map((_, column) => `${kind}!${String.fromCharCode(65 + column)}${index + 2}`)),
    );
    if (places.length === 0) return fc.constant<Sample>(sample);
    return fc
      .array(fc.tuple(fc.constantFrom(...places), fc.constantFrom(...FORMULAS)), { maxLength: 5 })
      .map((formulas) => ({ ...sample, formulas: Object.fromEntries(formulas) }));
  });

/** Cells to be typed into a workbook: a pick among its cells and what is typed. */
export const arbitraryEdits = fc.array(fc.tuple(fc.nat(), cell), { minLength: 1, maxLength: 4 });
