import { weightNotRead } from "../../../src/checks/rules/weightNotRead";
import { testRule } from "../testRule";

testRule(weightNotRead, {
  clean: [
    {
      title: "numbers and weights with a unit",
      tables: {
        pieces: [
          ["Piece", "Weight"],
          ["P1", 1.2],
          ["P2", "800 g"],
          ["P3", "2 lb 3 oz"],
          ["P4", "1,2 kg"],
          ["P5", "0.8"],
        ],
      },
    },
    {
      title: "blanks and an error value",
      tables: {
        pieces: [
          ["Piece", "Weight"],
          ["P1", null],
          ["P2", { error: "#N/A" }],
        ],
      },
    },
    {
      title: "a weight below 0, which another rule reports",
      tables: {
        pieces: [
          ["Piece", "Weight"],
          ["P1", -1],
          ["P2", "-1"],
        ],
      },
    },
  ],
  findings: [
    {
      title: "words and units that nobody knows",
      tables: {
        pieces: [
          ["Piece", "Weight"],
          ["P1", "heavy"],
          ["P2", "2 st"],
        ],
      },
      expect: [
        { at: "pieces!B2", messageId: "noWeight", data: { given: "heavy" } },
        { at: "pieces!B3", messageId: "noWeight", data: { given: "2 st" } },
      ],
    },
    {
      title: "a number without a unit that could be two",
      tables: {
        pieces: [
          ["Piece", "Weight"],
          ["P1", "1,250"],
        ],
      },
      expect: [{ at: "pieces!B2", messageId: "twoWeights", data: { first: "1250", second: "1.25" } }],
    },
    {
      title: "a word that says it is not known, where a blank says the same",
      tables: {
        pieces: [
          ["Piece", "Weight"],
          ["P1", "tbc"],
        ],
      },
      expect: [{ at: "pieces!B2", messageId: "open", suggestions: [{ "pieces!B2": null }] }],
    },
  ],
});
