import { dateFarOff } from "../../../src/checks/rules/dateFarOff";
import { day } from "../day";
import { testRule } from "../testRule";

testRule(dateFarOff, {
  clean: [
    {
      title: "the first day and the last that are taken for meant",
      tables: {
        pieces: [
          ["Piece", "Out", "Due"],
          ["P1", day("2000-01-01"), day("2031-03-05")],
        ],
      },
    },
    {
      title: "a 0, which some hosts send for a blank",
      tables: {
        pieces: [
          ["Piece", "Out"],
          ["P1", 0],
        ],
      },
    },
    {
      title: "text, which other rules report",
      tables: {
        pieces: [
          ["Piece", "Out"],
          ["P1", "1930-03-05"],
        ],
      },
    },
    {
      title: "every date of a check made long ago",
      asOf: day("2001-03-05"),
      tables: {
        pieces: [
          ["Piece", "Out", "Due"],
          ["P1", day("2001-03-02"), day("2006-03-05")],
        ],
      },
    },
    {
      title: "an old date in a column that is not read as one",
      tables: {
        pieces: [
          ["Piece", "Note"],
          ["P1", day("1962-05-01")],
        ],
      },
    },
  ],
  findings: [
    {
      title: "a year typed with two figures that the host read as 1930",
      asOf: day("2029-03-05"),
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", day("1930-03-05")],
        ],
      },
      expect: [
        {
          at: "pieces!B2",
          messageId: "farOff",
          data: { iso: "1930-03-05", asOf: "2029-03-05" },
          suggestions: [{ "pieces!B2": day("2030-03-05") }],
        },
      ],
    },
    {
      title: "the day after the last, and a slip in the century",
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", day("2031-03-06")],
          ["P2", day("2126-03-09")],
          ["P3", day("1999-12-31")],
        ],
      },
      expect: [
        { at: "pieces!B2", messageId: "farOff", suggestions: [{ "pieces!B2": day("2026-03-06") }] },
        { at: "pieces!B3", messageId: "farOff", suggestions: [{ "pieces!B3": day("2026-03-09") }] },
        { at: "pieces!B4", messageId: "farOff", suggestions: [{ "pieces!B4": day("2026-12-31") }] },
      ],
    },
    {
      title: "a day of the month typed alone",
      tables: {
        pieces: [
          ["Piece", "Out"],
          ["P1", 5],
        ],
      },
      expect: [{ at: "pieces!B2", messageId: "notTypedAsDate", data: { number: 5, iso: "1900-01-05" } }],
    },
    {
      title: "an Out, and not the due day that only follows from it",
      tables: {
        pieces: [
          ["Piece", "Out", "Due"],
          ["P1", day("2062-03-05"), day("2062-03-12")],
        ],
      },
      formulas: { "pieces!C2": "=TACK.DUE([@Out],7)" },
      expect: [{ at: "pieces!B2", messageId: "farOff", suggestions: [{ "pieces!B2": day("2026-03-05") }] }],
    },
    {
      title: "a formula's date, without suggesting to write over it",
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", day("2126-03-09")],
        ],
      },
      formulas: { "pieces!B2": "=A2+36500" },
      expect: [{ at: "pieces!B2", messageId: "farOff" }],
    },
  ],
});
