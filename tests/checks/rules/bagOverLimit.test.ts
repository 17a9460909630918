import { bagOverLimit } from "../../../src/checks/rules/bagOverLimit";
import { day } from "../day";
import { testRule } from "../testRule";

const out = day("2026-03-02");

testRule(bagOverLimit, {
  clean: [
    {
      title: "no limit stated",
      tables: {
        pieces: [
          ["Piece", "Weight", "Bag"],
          ["P1", 40, 1],
        ],
      },
    },
    {
      title: "bags at their limit to the gram, and pieces in no bag",
      tables: {
        pieces: [
          ["Piece", "Weight", "Bag", "Bag limit"],
          ["P1", 6, 1, 10],
          ["P2", 4, "1", null],
          ["P3", 25, null, 10],
          ["P4", 25, "tbc", 10],
        ],
      },
    },
    {
      title: "a bag whose pieces are back",
      tables: {
        pieces: [
          ["Piece", "Weight", "Bag", "Out", "Back"],
          ["P1", 8, 1, out, null],
          ["P2", 8, 1, out, day("2026-03-04")],
        ],
      },
      beside: { Job: { rows: [["Bag limit", 10]] } },
    },
    {
      title: "a limit that is none",
      tables: {
        pieces: [
          ["Piece", "Weight", "Bag", "Bag limit"],
          ["P1", 12, 1, "light"],
          ["P2", 12, 2, 0],
        ],
      },
      beside: {
        Job: {
          rows: [
            ["Bag limit", "ask Ada"],
            ["Max bag weight", 0],
          ],
        },
      },
    },
    {
      title: "a bag that may weigh more than the others",
      tables: {
        pieces: [
          ["Piece", "Weight", "Bag", "Bag limit"],
          ["P1", 18, "Case", "20 kg"],
          ["P2", 9, 2, null],
        ],
      },
      beside: { Job: { rows: [["Bag limit", "10 kg"]] } },
    },
  ],
  findings: [
    {
      title: "a bag above a limit on a sheet, at its first row, by typical weights too",
      tables: {
        pieces: [
          ["Piece", "Kind", "Weight", "Bag", "Quantity"],
          ["P1", "Boots", 1, "Bag 1", null],
          ["P2", "Coat", "4.5 kg", "bag-1", 2],
          ["P3", "Dress", null, "Bag 1", null],
          ["P4", "Coat", 9, 2, null],
        ],
      },
      beside: { Job: { rows: [["Bag limit", "10 kg"]] } },
      expect: [
        {
          at: "pieces!D2",
          messageId: "over",
          data: { bag: "Bag 1", weight: "10.3", over: "0.3", limit: "10" },
        },
      ],
    },
    {
      title: "a limit in pounds in the note's own words",
      tables: {
        pieces: [
          ["Piece", "Weight", "Bag"],
          ["P1", "21 lb", "A"],
        ],
      },
      beside: { Job: { rows: [["Bag limit (lb)", 20]] } },
      expect: [
        { at: "pieces!C2", messageId: "over", data: { bag: "A", weight: "9.525", over: "0.453", limit: "9.072" } },
      ],
    },
    {
      title: "the least of the limits in a bag's own rows, in the unit of their heading",
      tables: {
        pieces: [
          ["Piece", "Weight", "Bag", "Bag limit"],
          ["P1", "4 kg", 1, 9000],
          ["P2", "4 kg", 1, 7000],
        ],
      },
      hints: { pieces: { bagLimit: { currency: null, unit: "g" } } },
      expect: [{ at: "pieces!C2", messageId: "over", data: { weight: "8", over: "1", limit: "7" } }],
    },
  ],
});
