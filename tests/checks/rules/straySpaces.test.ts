import { straySpaces } from "../../../src/checks/rules/straySpaces";
import { testRule } from "../testRule";

testRule(straySpaces, {
  clean: [
    {
      title: "tidy names",
      tables: {
        pieces: [
          ["Piece", "Lender", "Look"],
          ["P1", "Maison Orla", 3],
          ["P2", "Halden", "3, 7"],
        ],
      },
    },
    {
      title: "blanks and spaces alone",
      tables: {
        pieces: [
          ["Piece", "Lender"],
          ["P1", null],
          ["P2", "  "],
        ],
      },
    },
    {
      title: "spaces in a note",
      tables: {
        pieces: [
          ["Piece", "Note"],
          ["P1", "  call  first "],
        ],
      },
    },
    {
      title: "a formula's name",
      tables: {
        pieces: [
          ["Piece", "Lender"],
          ["P1", "Halden "],
        ],
      },
      formulas: { "pieces!B2": "=Z9" },
    },
  ],
  findings: [
    {
      title: "spaces around a name and doubled in it, shown in the message",
      tables: {
        pieces: [
          ["Piece", "Lender"],
          ["P1", " Maison  Orla "],
        ],
        lenders: [["Lender"], ["Halden "]],
      },
      expect: [
        {
          at: "pieces!B2",
          messageId: "spaces",
          data: { given: "·Maison··Orla·", tidy: "Maison Orla" },
          fix: { "pieces!B2": "Maison Orla" },
        },
        { at: "lenders!A2", messageId: "spaces", fix: { "lenders!A2": "Halden" } },
      ],
    },
    {
      title: "a non-breaking space, a line break and a character of no width, pasted from a message",
      tables: {
        pieces: [
          ["Piece", "Lender"],
          ["P1", "Maison\u00a0Orla"],
          ["P2", "Maison\nOrla"],
          ["P3", "Maison Or\u200bla"],
        ],
      },
      expect: [2, 3, 4].map((row) => ({
        at: `pieces!B${row}`,
        messageId: "spaces",
        fix: { [`pieces!B${row}`]: "Maison Orla" },
      })),
    },
  ],
});
