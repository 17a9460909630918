import { termsNotRead } from "../../../src/checks/rules/termsNotRead";
import { day } from "../day";
import { testRule } from "../testRule";

testRule(termsNotRead, {
  clean: [
    {
      title: "terms as lenders say them",
      tables: {
        pieces: [
          ["Piece", "Terms"],
          ["P1", "7 days"],
          ["P2", "3 working days"],
          ["P3", 5],
          ["P4", "5 working days after shoot"],
          ["P5", "by 2026-03-12"],
          ["P6", "next working day"],
          ["P7", null],
        ],
        lenders: [
          ["Lender", "Terms"],
          ["Halden", "2 weeks"],
        ],
        receipts: [
          ["Shop", "Terms"],
          ["Kessel", "30 days from receipt"],
        ],
      },
    },
    {
      title: "terms not known yet, of a piece that is not out and of a lender",
      tables: {
        pieces: [
          ["Piece", "Out", "Terms"],
          ["P1", null, "tbc"],
        ],
        lenders: [
          ["Lender", "Terms"],
          ["Halden", "tbc"],
        ],
      },
    },
    {
      title: "an error value, which another rule reports",
      tables: {
        pieces: [
          ["Piece", "Terms"],
          ["P1", { error: "#N/A" }],
        ],
      },
    },
    {
      title: "terms not known of a piece that is back",
      tables: {
        pieces: [
          ["Piece", "Out", "Back", "Terms"],
          ["P1", day("2026-03-02"), day("2026-03-04"), "tbc"],
        ],
      },
    },
  ],
  findings: [
    {
      title: "a word that says no time",
      tables: {
        pieces: [
          ["Piece", "Terms"],
          ["P1", "soonish"],
        ],
        lenders: [
          ["Lender", "Terms"],
          ["Halden", "when done"],
        ],
      },
      expect: [
        { at: "pieces!B2", messageId: "notUnderstood", data: { given: "soonish", part: "soonish" } },
        { at: "lenders!B2", messageId: "notUnderstood" },
      ],
    },
    {
      title: "two readings, each as a suggestion",
      tables: {
        pieces: [
          ["Piece", "Terms"],
          ["P1", "7-10 days"],
          ["P2", "by 03/04/26"],
        ],
      },
      expect: [
        {
          at: "pieces!B2",
          messageId: "twoReadings",
          data: { first: "7 days", second: "10 days" },
          suggestions: [{ "pieces!B2": "7 days" }, { "pieces!B2": "10 days" }],
        },
        {
          at: "pieces!B3",
          messageId: "twoReadings",
          suggestions: [{ "pieces!B3": "by 2026-04-03" }, { "pieces!B3": "by 2026-03-04" }],
        },
      ],
    },
    {
      title: "a number that is a date and no number of days",
      tables: {
        pieces: [
          ["Piece", "Terms"],
          ["P1", day("2026-03-09")],
        ],
      },
      expect: [{ at: "pieces!B2", messageId: "notUsable" }],
    },
    {
      title: "terms still open although the piece is out",
      tables: {
        pieces: [
          ["Piece", "Out", "Terms"],
          ["P1", day("2026-03-02"), "tbc"],
        ],
      },
      expect: [{ at: "pieces!C2", messageId: "open", data: { given: "tbc" } }],
    },
  ],
});
