import { bagTooHeavy } from "../../../src/checks/rules/bagTooHeavy";
import { day } from "../day";
import { testRule } from "../testRule";

testRule(bagTooHeavy, {
  clean: [
    {
      title: "bags that one person can lift, and pieces in no bag",
      tables: {
        pieces: [
          ["Piece", "Weight", "Bag"],
          ["P1", 12, 1],
          ["P2", 8.7, 1],
          ["P3", 20, "Bag 2"],
          ["P4", 25, null],
          ["P5", 25, "tbc"],
        ],
      },
    },
    {
      title: "a bag whose pieces are back or settled",
      tables: {
        pieces: [
          ["Piece", "Weight", "Bag", "Out", "Back", "Settled"],
          ["P1", 15, 1, day("2026-03-02"), null, null],
          ["P2", 15, 1, day("2026-03-02"), day("2026-03-04"), null],
          ["P3", 15, 1, day("2026-03-02"), null, "lost"],
        ],
      },
    },
    {
      title: "a weight and a kind that cannot be read, which other rules report",
      tables: {
        pieces: [
          ["Piece", "Kind", "Weight", "Bag"],
          ["P1", "Coat", "heavy", 1],
          ["P2", "Gizmo", null, 1],
          ["P3", "Coat", 20, 1],
        ],
      },
    },
  ],
  findings: [
    {
      title: "a bag above 50 lb, at its first row, however it is spelt",
      tables: {
        pieces: [
          ["Piece", "Weight", "Bag", "Quantity"],
          ["P1", 1, "Bag 1", null],
          ["P2", 11, "bag-2", 1],
          ["P3", "6 kg", "Bag 2", 2],
        ],
      },
      expect: [
        {
          at: "pieces!C3",
          messageId: "tooHeavy",
          data: {
            bag: "bag-2",
            sentence:
              "23.0 kg (51 lb) is past what stylists are known to carry, which is no safe load either; share it out or go twice.",
          },
        },
      ],
    },
    {
      title: "a bag between the limit of the easiest lift and 50 lb, typical weights with it",
      tables: {
        pieces: [
          ["Piece", "Kind", "Weight", "Bag"],
          ["P1", null, 20, 1],
          ["P2", "Coat", null, 1],
        ],
      },
      expect: [
        {
          at: "pieces!D2",
          messageId: "tooHeavy",
          data: {
            bag: "1",
            sentence:
              "20.9 kg (46 lb) is 1.01 times what the NIOSH lifting equation allows for soft bags in the easiest lift; take some out.",
          },
        },
      ],
    },
  ],
});
