import { dateAsText } from "../../../src/checks/rules/dateAsText";
import { day } from "../day";
import { testRule } from "../testRule";

testRule(dateAsText, {
  clean: [
    {
      title: "real dates",
      tables: {
        pieces: [
          ["Piece", "Out", "Due"],
          ["P1", day("2026-03-02"), day("2026-03-09")],
        ],
      },
    },
    {
      title: "a date with a time of day",
      tables: {
        pieces: [
          ["Piece", "Out"],
          ["P1", day("2026-03-02") + 0.6],
        ],
      },
    },
    {
      title: "blanks, spaces and the 0 some hosts send for a blank",
      tables: {
        pieces: [
          ["Piece", "Out", "Due", "Back"],
          ["P1", null, "  ", 0],
        ],
      },
    },
    {
      title: "text that says the day is not known yet",
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", "tbc"],
          ["P2", "?"],
          ["P3", "à confirmer"],
        ],
      },
    },
    {
      title: "a text that could be two days, which another rule reports",
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", "03/04/26"],
        ],
      },
    },
    {
      title: "a date in a column that holds no dates",
      tables: {
        pieces: [
          ["Piece", "Note"],
          ["P1", "2026-03-05"],
        ],
      },
    },
    {
      title: "an error value, which another rule reports",
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", { error: "#REF!" }],
        ],
      },
    },
    {
      title: "a formula that gives a real date",
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", day("2026-03-09")],
        ],
      },
      formulas: { "pieces!B2": "=TACK.DUE(A2,B2)" },
    },
  ],
  findings: [
    {
      title: "ISO text",
      tables: {
        pieces: [
          ["Piece", "Out"],
          ["P1", "2026-03-05"],
        ],
      },
      expect: [
        {
          at: "pieces!B2",
          messageId: "typed",
          data: { given: "2026-03-05", iso: "2026-03-05" },
          fix: { "pieces!B2": day("2026-03-05") },
        },
      ],
    },
    {
      title: "a named month, in several languages and with the weekday",
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", "5 Mar 2026"],
          ["P2", "Thu 5th March 2026"],
          ["P3", "5. März 2026"],
          ["P4", "5 mars 2026"],
        ],
      },
      expect: [2, 3, 4, 5].map((row) => ({
        at: `pieces!B${row}`,
        messageId: "typed",
        fix: { [`pieces!B${row}`]: day("2026-03-05") },
      })),
    },
    {
      title: "figures that can be one day only, and a day and month that are the same figure",
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", "25/12/2026"],
          ["P2", "3/3/2026"],
        ],
      },
      expect: [
        { at: "pieces!B2", messageId: "typed", fix: { "pieces!B2": day("2026-12-25") } },
        { at: "pieces!B3", messageId: "typed", fix: { "pieces!B3": day("2026-03-03") } },
      ],
    },
    {
      title: "dates kept as text in the other tables",
      tables: {
        requests: [
          ["Lender", "Asked", "Needed by"],
          ["Maison Orla", "2026-03-01", "2026-03-04"],
        ],
        looks: [
          ["Look", "Date"],
          [1, "2026-03-10"],
        ],
        receipts: [
          ["Shop", "Bought"],
          ["Halden", "1 Mar 2026"],
        ],
      },
      expect: [
        { at: "requests!B2", messageId: "typed", fix: { "requests!B2": day("2026-03-01") } },
        { at: "requests!C2", messageId: "typed", fix: { "requests!C2": day("2026-03-04") } },
        { at: "looks!B2", messageId: "typed", fix: { "looks!B2": day("2026-03-10") } },
        { at: "receipts!B2", messageId: "typed", fix: { "receipts!B2": day("2026-03-01") } },
      ],
    },
    {
      title: "a formula that gives text, without a fix that would lose the formula",
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", "2026-03-05"],
        ],
      },
      formulas: { "pieces!B2": '=TEXT(C2,"yyyy-mm-dd")' },
      expect: [{ at: "pieces!B2", messageId: "fromFormula", data: { iso: "2026-03-05" } }],
    },
  ],
});
