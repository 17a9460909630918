import { lenderWrittenTwoWays } from "../../../src/checks/rules/lenderWrittenTwoWays";
import { testRule } from "../testRule";

const named = (...lenders: string[]): [string, string][] => [
  ["Piece", "Lender"],
  ...lenders.map((lender, at) => [`P${at + 1}`, lender] as [string, string]),
];

testRule(lenderWrittenTwoWays, {
  clean: [
    { title: "one spelling throughout", tables: { pieces: named("Maison Orla", "Maison Orla", "Halden") } },
    { title: "stray spaces, which another rule reports", tables: { pieces: named("Maison Orla", " Maison  Orla ") } },
    {
      title: "another case with a stray space, which is reported first",
      tables: { pieces: named("Maison Orla", "MAISON ORLA ") },
    },
    { title: "other letters, which other rules report", tables: { pieces: named("Maison Orla", "Maison Ola") } },
  ],
  findings: [
    {
      title: "case, accents and punctuation, mended to the commoner spelling in every row",
      tables: {
        pieces: named("MAISON ORLA", "Maison Orla", "Maison Orla", "Maïson-Orla", "MAISON ORLA", "Maison Orla"),
      },
      expect: [
        {
          at: "pieces!B2",
          messageId: "written",
          data: { lender: "MAISON ORLA", rows: "2 rows", usual: "Maison Orla" },
          fix: { "pieces!B2": "Maison Orla", "pieces!B6": "Maison Orla" },
        },
        { at: "pieces!B5", messageId: "written", fix: { "pieces!B5": "Maison Orla" } },
      ],
    },
    {
      title: "the spelling of the lenders table before the commoner one",
      tables: { pieces: named("halden", "halden"), lenders: [["Lender"], ["Halden"]] },
      expect: [
        {
          at: "pieces!B2",
          messageId: "written",
          data: { usual: "Halden" },
          fix: { "pieces!B2": "Halden", "pieces!B3": "Halden" },
        },
      ],
    },
    {
      title: "a formula's spelling, without a fix that would lose the formula",
      tables: { pieces: named("Halden", "halden") },
      formulas: { "pieces!B3": "=Z9" },
      expect: [{ at: "pieces!B3", messageId: "written" }],
    },
  ],
});
