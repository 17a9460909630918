import { formulaError } from "../../../src/checks/rules/formulaError";
import { day } from "../day";
import { testRule } from "../testRule";

const out = day("2026-03-02");

testRule(formulaError, {
  clean: [
    {
      title: "formulas that give values",
      tables: {
        pieces: [
          ["Piece", "Out", "Due"],
          ["P1", out, out + 7],
        ],
      },
      formulas: { "pieces!C2": "=B2+7" },
    },
    {
      title: "an error that follows from a text date in the same row",
      tables: {
        pieces: [
          ["Piece", "Out", "Due"],
          ["P1", "03/04/26", { error: "#VALUE!" }],
        ],
      },
      formulas: { "pieces!C2": "=TACK.DUE(B2,7)" },
    },
    {
      title: "an error that follows from terms that cannot be read, in a table's own notation",
      tables: {
        pieces: [
          ["Piece", "Out", "Terms", "Due"],
          ["P1", out, "soonish", { error: "#VALUE!" }],
          ["P2", out, "soonish", { error: "#VALUE!" }],
        ],
      },
      formulas: {
        "pieces!D2": "=TACK.DUE([@Out],[@Terms])",
        "pieces!D3": "=_xldudf_TACK_DUE(Pieces[[#This Row],[Out]],Pieces[[#This Row],[Terms]])",
      },
    },
    {
      title: "our function in a row that is not out yet",
      tables: {
        pieces: [
          ["Piece", "Out", "Terms", "Due"],
          ["P1", null, "7 days", { error: "#N/A" }],
        ],
      },
      formulas: { "pieces!D2": "=TACK.DUE(B2,C2)" },
    },
    { title: "an error in a column that is not read", tables: { pieces: [["Piece"], ["P1"]] } },
  ],
  findings: [
    {
      title: "a formula's error",
      tables: {
        pieces: [
          ["Piece", "Value", "Due"],
          ["P1", { error: "#REF!" }, { error: "#N/A" }],
        ],
      },
      formulas: { "pieces!B2": "=#REF!", "pieces!C2": "=VLOOKUP(A2,Z1:Z9,1,0)" },
      expect: [
        { at: "pieces!B2", messageId: "fromFormula", data: { error: "#REF!" } },
        { at: "pieces!C2", messageId: "fromFormula", data: { error: "#N/A" } },
      ],
    },
    {
      title: "only the first of two errors, where one follows from the other",
      tables: {
        pieces: [
          ["Piece", "Value", "Total value"],
          ["P1", { error: "#REF!" }, { error: "#REF!" }],
        ],
      },
      formulas: { "pieces!B2": "=#REF!", "pieces!C2": "=$B2*2" },
      expect: [{ at: "pieces!B2", messageId: "fromFormula" }],
    },
    {
      title: "an error that stands as a value",
      tables: {
        lenders: [
          ["Lender", "Terms"],
          ["Halden", { error: "#N/A" }],
        ],
      },
      expect: [{ at: "lenders!B2", messageId: "typed", data: { error: "#N/A" } }],
    },
    {
      title: "an error of our function that is out and whose cells can all be read",
      tables: {
        pieces: [
          ["Piece", "Out", "Terms", "Due"],
          ["P1", out, "5 days after shoot", { error: "#VALUE!" }],
        ],
      },
      formulas: { "pieces!D2": "=TACK.DUE(B2,C2)" },
      expect: [{ at: "pieces!D2", messageId: "fromFormula" }],
    },
    {
      title: "a formula that reads another row",
      tables: {
        pieces: [
          ["Piece", "Out", "Due"],
          ["P1", "03/04/26", null],
          ["P2", out, { error: "#VALUE!" }],
        ],
      },
      formulas: { "pieces!C3": "=B2+7" },
      expect: [{ at: "pieces!C3", messageId: "fromFormula" }],
    },
  ],
});
