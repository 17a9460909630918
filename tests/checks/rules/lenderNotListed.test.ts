import { lenderNotListed } from "../../../src/checks/rules/lenderNotListed";
import { testRule } from "../testRule";

const lenders = [
  ["Lender"],
  ["Maison Orla"],
  ["Halden Press Office"],
  ["Ado"],
  ["Studio Nord"],
  ["Studio Sud"],
] as const;

testRule(lenderNotListed, {
  clean: [
    {
      title: "listed lenders, in any case, accents and spacing",
      tables: {
        pieces: [
          ["Piece", "Lender"],
          ["P1", "maison orla"],
          ["P2", " Maïson  Orla"],
          ["P3", "ADO"],
        ],
        lenders,
      },
    },
    {
      title: "no lenders table, or one without rows",
      tables: {
        pieces: [
          ["Piece", "Lender"],
          ["P1", "Corbel"],
        ],
        lenders: [["Lender"]],
      },
    },
    {
      title: "no lender, or one that is not known yet",
      tables: {
        pieces: [
          ["Piece", "Lender"],
          ["P1", null],
          ["P2", "tbc"],
          ["P3", "Own"],
          ["P4", "stylist's kit"],
        ],
        lenders,
      },
    },
    {
      title: "an error value, which another rule reports",
      tables: {
        pieces: [
          ["Piece", "Lender"],
          ["P1", { error: "#N/A" }],
        ],
        lenders,
      },
    },
  ],
  findings: [
    {
      title: "a slip, once for all its rows, with the listed name as suggestion for each",
      tables: {
        pieces: [
          ["Piece", "Lender"],
          ["P1", "Maison Ola"],
          ["P2", "Maison Orla"],
          ["P3", "Maison Ola"],
        ],
        lenders,
        requests: [["Lender"], ["Maison Ola"]],
      },
      expect: [
        {
          at: "pieces!B2",
          messageId: "nearest",
          data: { lender: "Maison Ola", rows: "3 rows", nearest: "Maison Orla" },
          suggestions: [{ "pieces!B2": "Maison Orla", "pieces!B4": "Maison Orla", "requests!A2": "Maison Orla" }],
        },
      ],
    },
    {
      title: "a name with words left out or put in",
      tables: {
        pieces: [
          ["Piece", "Lender"],
          ["P1", "Halden"],
          ["P2", "Maison Orla Paris"],
        ],
        lenders,
      },
      expect: [
        {
          at: "pieces!B2",
          messageId: "nearest",
          data: { nearest: "Halden Press Office" },
          suggestions: [{ "pieces!B2": "Halden Press Office" }],
        },
        {
          at: "pieces!B3",
          messageId: "nearest",
          data: { nearest: "Maison Orla" },
          suggestions: [{ "pieces!B3": "Maison Orla" }],
        },
      ],
    },
    {
      title: "a name like no other, a short one, and one that could be two",
      tables: {
        pieces: [
          ["Piece", "Lender"],
          ["P1", "Corbel"],
          ["P2", "Ada"],
          ["P3", "Studio"],
        ],
        lenders,
      },
      expect: [
        { at: "pieces!B2", messageId: "unknown", data: { lender: "Corbel", rows: "1 row" } },
        { at: "pieces!B3", messageId: "unknown" },
        { at: "pieces!B4", messageId: "unknown" },
      ],
    },
    {
      title: "a formula's name, without suggesting to write over it",
      tables: {
        pieces: [
          ["Piece", "Lender"],
          ["P1", "Maison Ola"],
        ],
        lenders,
      },
      formulas: { "pieces!B2": "=Z9" },
      expect: [{ at: "pieces!B2", messageId: "nearest" }],
    },
  ],
});
