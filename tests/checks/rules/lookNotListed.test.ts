import { lookNotListed } from "../../../src/checks/rules/lookNotListed";
import { testRule } from "../testRule";

const looks = [
  ["Look", "Talent"],
  [1, "Ana"],
  ["2", "Bo"],
  ["Look 03", "Ana"],
  ["7a", "Cy"],
] as const;

testRule(lookNotListed, {
  clean: [
    {
      title: "listed looks, however written",
      tables: {
        pieces: [
          ["Piece", "Look"],
          ["P1", "look 1"],
          ["P2", 2],
          ["P3", "3"],
          ["P4", "7 A"],
          ["P5", "1, 3"],
          ["P6", "1 & 2"],
          ["P7", "1-3"],
        ],
        looks,
      },
    },
    {
      title: "words that name no look",
      tables: {
        pieces: [
          ["Piece", "Look"],
          ["P1", "spare"],
          ["P2", "all"],
          ["P3", "tbc"],
          ["P4", "Option for Bo"],
          ["P5", "street"],
          ["P6", null],
        ],
        looks,
      },
    },
    {
      title: "no looks table, or one without rows",
      tables: {
        pieces: [
          ["Piece", "Look"],
          ["P1", 9],
        ],
        looks: [["Look"]],
      },
    },
  ],
  findings: [
    {
      title: "a look that is not listed, once for all its pieces",
      tables: {
        pieces: [
          ["Piece", "Look"],
          ["P1", 9],
          ["P2", "look 9"],
          ["P3", "1, 8"],
        ],
        looks,
      },
      expect: [
        { at: "pieces!B2", messageId: "unknown", data: { look: "9", rows: "2 pieces" } },
        { at: "pieces!B4", messageId: "unknown", data: { look: "8", rows: "1 piece" } },
      ],
    },
    {
      title: "a name among looks that have names",
      tables: {
        pieces: [
          ["Piece", "Look"],
          ["P1", "Beach"],
        ],
        looks: [["Look"], ["Street"], ["Pool"]],
      },
      expect: [{ at: "pieces!B2", messageId: "unknown", data: { look: "Beach" } }],
    },
  ],
});
