import { weightUnitMissing } from "../../../src/checks/rules/weightUnitMissing";
import { testRule } from "../testRule";

testRule(weightUnitMissing, {
  clean: [
    {
      title: "bare numbers alone, which are kilograms, and beside kilograms",
      tables: {
        pieces: [
          ["Piece", "Weight"],
          ["P1", 1.2],
          ["P2", "0.8 kg"],
          ["P3", "1,4kg"],
          ["P4", "800 g"],
        ],
      },
    },
    {
      title: "a heading that says the unit",
      tables: {
        pieces: [
          ["Piece", "Weight"],
          ["P1", 2],
          ["P2", "3 lb"],
        ],
      },
      hints: { pieces: { weight: { currency: null, unit: "lb" } } },
    },
    {
      title: "a 0, and a number that another rule takes for grams",
      tables: {
        pieces: [
          ["Piece", "Weight"],
          ["P1", 0],
          ["P2", 800],
          ["P3", "900 g"],
        ],
      },
    },
  ],
  findings: [
    {
      title: "a bare number among pounds",
      tables: {
        pieces: [
          ["Piece", "Weight"],
          ["P1", "2 lb"],
          ["P2", "3 lbs"],
          ["P3", 1.5],
          ["P4", "1 kg"],
        ],
      },
      expect: [
        {
          at: "pieces!B4",
          messageId: "noUnit",
          data: { number: 1.5, unit: "lb" },
          suggestions: [{ "pieces!B4": "1.5 lb" }],
        },
      ],
    },
    {
      title: "what a formula gives, without a word on what to write over it",
      tables: {
        pieces: [
          ["Piece", "Weight"],
          ["P1", "200 g"],
          ["P2", 20],
        ],
      },
      formulas: { "pieces!B3": "=C3*2" },
      expect: [{ at: "pieces!B3", messageId: "noUnit", data: { number: 20, unit: "g" } }],
    },
  ],
});
