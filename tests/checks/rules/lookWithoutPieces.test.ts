import { lookWithoutPieces } from "../../../src/checks/rules/lookWithoutPieces";
import { day } from "../day";
import { testRule } from "../testRule";

testRule(lookWithoutPieces, {
  clean: [
    {
      title: "pieces for every look, also in lists",
      tables: {
        pieces: [
          ["Piece", "Look"],
          ["P1", "1, 3"],
          ["P2", "look 2"],
        ],
        looks: [["Look"], [1], [2], [3]],
      },
    },
    {
      title: "looks that are still being made up: most have no pieces",
      tables: {
        pieces: [
          ["Piece", "Look"],
          ["P1", 1],
        ],
        looks: [["Look"], [1], [2], [3]],
      },
    },
    {
      title: "a look whose own row says what is worn",
      tables: {
        pieces: [
          ["Piece", "Look"],
          ["P1", 1],
        ],
        looks: [
          ["Look", "Pieces"],
          [1, null],
          [2, "P7, P9"],
        ],
      },
    },
    { title: "pieces without a look column", tables: { pieces: [["Piece"], ["P1"]], looks: [["Look"], [1]] } },
    {
      title: "a look whose day is past",
      tables: {
        pieces: [
          ["Piece", "Look"],
          ["P1", 1],
        ],
        looks: [
          ["Look", "Date"],
          [1, null],
          [2, day("2026-03-04")],
        ],
      },
    },
  ],
  findings: [
    {
      title: "the one look that no piece names",
      tables: {
        pieces: [
          ["Piece", "Look"],
          ["P1", 1],
          ["P2", 2],
        ],
        looks: [["Look"], [1], [2], ["Look 3"]],
      },
      expect: [{ at: "looks!A4", messageId: "empty", data: { look: "3" } }],
    },
  ],
});
