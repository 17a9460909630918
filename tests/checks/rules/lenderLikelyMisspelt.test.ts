import { lenderLikelyMisspelt } from "../../../src/checks/rules/lenderLikelyMisspelt";
import { testRule } from "../testRule";

const named = (...lenders: string[]): [string, string][] => [
  ["Piece", "Lender"],
  ...lenders.map((lender, at) => [`P${at + 1}`, lender] as [string, string]),
];

testRule(lenderLikelyMisspelt, {
  clean: [
    {
      title: "short names that differ by a letter",
      tables: { pieces: named("Ado", "Ada", "Ado", "Halden", "Holden") },
    },
    {
      title: "names that differ by a figure or a single letter",
      tables: { pieces: named("Studio 1", "Studio 2", "Studio 11", "Atelier A", "Atelier B") },
    },
    {
      title: "a letter exchanged in a short word",
      tables: { pieces: named("Maison Lea", "Maison Lea", "Maison Leo", "Rental One", "Rental Ono") },
    },
    { title: "another first letter", tables: { pieces: named("Barlow House", "Harlow House") } },
    {
      title: "two names that are both in use",
      tables: { pieces: named(...Array<string>(5).fill("Corbel House"), ...Array<string>(4).fill("Corbell House")) },
    },
    {
      title: "spellings that differ in case or accents, which another rule reports",
      tables: { pieces: named("Maison Orla", "MAISON ORLA", "Maïson Orla") },
    },
    {
      title: "a sheet with a lenders table, which decides",
      tables: { pieces: named("Maison Orla", "Maison Ola"), lenders: [["Lender"], ["Maison Orla"]] },
    },
  ],
  findings: [
    {
      title: "a letter left out, for the commoner spelling",
      tables: { pieces: named("Maison Ola", "Maison Orla", "maison orla") },
      expect: [
        {
          at: "pieces!B2",
          messageId: "misspelt",
          data: { lender: "Maison Ola", rows: "1 row", commoner: "Maison Orla", commonerRows: "2 rows" },
          suggestions: [{ "pieces!B2": "Maison Orla" }],
        },
      ],
    },
    {
      title: "letters put in, exchanged and turned round; of equal spellings the first stands",
      tables: {
        pieces: named("Corbel House", "Corbell House", "Quillery", "Quilleri", "Vantage Rental", "Vanatge Rental"),
      },
      expect: [
        { at: "pieces!B3", messageId: "misspelt", suggestions: [{ "pieces!B3": "Corbel House" }] },
        { at: "pieces!B5", messageId: "misspelt", suggestions: [{ "pieces!B5": "Quillery" }] },
        { at: "pieces!B7", messageId: "misspelt", suggestions: [{ "pieces!B7": "Vantage Rental" }] },
      ],
    },
  ],
});
