import { quantityNotRead } from "../../../src/checks/rules/quantityNotRead";
import { testRule } from "../testRule";

testRule(quantityNotRead, {
  clean: [
    {
      title: "whole numbers, blanks and 0",
      tables: {
        pieces: [
          ["Piece", "Quantity", "Quantity back"],
          ["P1", 2, 0],
          ["P2", null, null],
        ],
      },
    },
    {
      title: "quantities with a word of counting",
      tables: {
        pieces: [
          ["Piece", "Quantity"],
          ["P1", "2 pcs"],
          ["P2", "x3"],
          ["P3", "1 pair"],
        ],
      },
    },
    {
      title: "a quantity below 0, which another rule reports",
      tables: {
        pieces: [
          ["Piece", "Quantity"],
          ["P1", -2],
          ["P2", "-2"],
        ],
      },
    },
  ],
  findings: [
    {
      title: "words and fractions",
      tables: {
        pieces: [
          ["Piece", "Quantity", "Quantity back"],
          ["P1", "a few", null],
          ["P2", 1.5, "most"],
        ],
      },
      expect: [
        { at: "pieces!B2", messageId: "noQuantity", data: { given: "a few" } },
        { at: "pieces!B3", messageId: "noQuantity", data: { given: "1.5" } },
        { at: "pieces!C3", messageId: "noQuantity", data: { given: "most" } },
      ],
    },
  ],
});
