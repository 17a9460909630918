import { lookWithoutShoes } from "../../../src/checks/rules/lookWithoutShoes";
import { day } from "../day";
import { testRule } from "../testRule";

const looks = [["Look"], [1], [2], [3]] as const;
const full = [
  ["P1", "dress", 1],
  ["P2", "shoes", 1],
  ["P3", "trousers", 2],
  ["P4", "ankle boots", 2],
] as const;
const heading = ["Piece", "Kind", "Look"] as const;

testRule(lookWithoutShoes, {
  clean: [
    {
      title: "shoes or boots in every look",
      tables: { pieces: [heading, ...full, ["P5", "coat", 3], ["P6", "shoes", 3]], looks },
    },
    {
      title: "shoes shared by two looks",
      tables: { pieces: [heading, ...full, ["P5", "coat", 3], ["P6", "dress", 3], ["P7", "shoes", "2, 3"]], looks },
    },
    {
      title: "a story in which most looks have no shoes",
      tables: {
        pieces: [
          heading,
          ["P1", "dress", 1],
          ["P2", "hat", 1],
          ["P3", "coat", 2],
          ["P4", "hat", 2],
          ["P5", "coat", 3],
          ["P6", "shoes", 3],
        ],
        looks,
      },
    },
    {
      title: "a look with a single piece, still being made up",
      tables: { pieces: [heading, ...full, ["P5", "coat", 3]], looks },
    },
    {
      title: "a kind that is not known and may be shoes",
      tables: { pieces: [heading, ...full, ["P5", "coat", 3], ["P6", "the silver pair", 3]], looks },
    },
    {
      title: "a look whose day is past",
      tables: {
        pieces: [heading, ...full, ["P5", "coat", 3], ["P6", "dress", 3]],
        looks: [
          ["Look", "Date"],
          [1, null],
          [2, null],
          [3, day("2026-03-04")],
        ],
      },
    },
  ],
  findings: [
    {
      title: "one of two looks, of which the other has its shoes",
      tables: {
        pieces: [heading, ["P1", "dress", 1], ["P2", "shoes", 1], ["P3", "coat", 2], ["P4", "trousers", 2]],
        looks: [["Look"], [1], [2]],
      },
      expect: [{ at: "looks!A3", messageId: "noShoes", data: { look: "2", count: 2 } }],
    },
    {
      title: "the one look without shoes",
      tables: { pieces: [heading, ...full, ["P5", "coat", 3], ["P6", "dress", 3]], looks },
      expect: [{ at: "looks!A4", messageId: "noShoes", data: { look: "3", count: 2 } }],
    },
  ],
});
