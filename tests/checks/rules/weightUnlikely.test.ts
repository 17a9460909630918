import { weightUnlikely } from "../../../src/checks/rules/weightUnlikely";
import { testRule } from "../testRule";

testRule(weightUnlikely, {
  clean: [
    {
      title: "weights of clothes in kilograms",
      tables: {
        pieces: [
          ["Piece", "Weight"],
          ["P1", 0.3],
          ["P2", 12],
          ["P3", 30],
        ],
      },
    },
    {
      title: "grams that say so, in the cell or in the heading",
      tables: {
        pieces: [
          ["Piece", "Weight"],
          ["P1", "800 g"],
        ],
      },
    },
    {
      title: "grams that the heading says",
      tables: {
        pieces: [
          ["Piece", "Weight"],
          ["P1", 800],
        ],
      },
      hints: { pieces: { weight: { currency: null, unit: "g" } } },
    },
    {
      title: "pounds that the heading says",
      tables: {
        pieces: [
          ["Piece", "Weight"],
          ["P1", 60],
        ],
      },
      hints: { pieces: { weight: { currency: null, unit: "lb" } } },
    },
  ],
  findings: [
    {
      title: "a bare number that reads as hundreds of kilograms",
      tables: {
        pieces: [
          ["Piece", "Weight"],
          ["P1", 800],
        ],
      },
      expect: [
        {
          at: "pieces!B2",
          messageId: "tooHeavy",
          data: { number: 800, unit: "kg" },
          suggestions: [{ "pieces!B2": "800 g" }],
        },
      ],
    },
    {
      title: "pounds beyond what one lifts",
      tables: {
        pieces: [
          ["Piece", "Weight"],
          ["P1", 900],
        ],
      },
      hints: { pieces: { weight: { currency: null, unit: "lb" } } },
      expect: [
        { at: "pieces!B2", messageId: "tooHeavy", data: { unit: "lb" }, suggestions: [{ "pieces!B2": "900 g" }] },
      ],
    },
  ],
});
