import { lookTalentDisagrees } from "../../../src/checks/rules/lookTalentDisagrees";
import { testRule } from "../testRule";

const looks = [
  ["Look", "Talent"],
  [1, "Ana Silva"],
  [2, "Bo & Cy"],
  [3, null],
  [4, "Di"],
] as const;

testRule(lookTalentDisagrees, {
  clean: [
    {
      title: "the same talent, in full or by first name or initial",
      tables: {
        pieces: [
          ["Piece", "Look", "Talent"],
          ["P1", 1, "Ana Silva"],
          ["P2", 1, "ana"],
          ["P3", 1, "A. Silva"],
        ],
        looks,
      },
    },
    {
      title: "one of several talents",
      tables: {
        pieces: [
          ["Piece", "Look", "Talent"],
          ["P1", 2, "Cy"],
          ["P2", 2, "Bo, Di"],
        ],
        looks,
      },
    },
    {
      title: "a piece in two looks, on one who wears either",
      tables: {
        pieces: [
          ["Piece", "Look", "Talent"],
          ["P1", "1, 4", "Di"],
        ],
        looks,
      },
    },
    {
      title: "a look that does not say who wears it",
      tables: {
        pieces: [
          ["Piece", "Look", "Talent"],
          ["P1", 3, "Ana"],
          ["P2", "1, 3", "Bo"],
          ["P3", 9, "Ana"],
        ],
        looks,
      },
    },
    {
      title: "no talent, or one not known yet",
      tables: {
        pieces: [
          ["Piece", "Look", "Talent"],
          ["P1", 1, null],
          ["P2", 1, "tbc"],
        ],
        looks,
      },
    },
  ],
  findings: [
    {
      title: "another talent than the look's",
      tables: {
        pieces: [
          ["Piece", "Look", "Talent"],
          ["P1", 1, "Bo"],
          ["P2", "1, 4", "Cy"],
        ],
        looks,
      },
      expect: [
        { at: "pieces!C2", messageId: "other", data: { talent: "Bo", look: "1", wearer: "Ana Silva" } },
        { at: "pieces!C3", messageId: "other", data: { talent: "Cy", look: "1" } },
      ],
    },
  ],
});
