import { dateNotRead } from "../../../src/checks/rules/dateNotRead";
import { day } from "../day";
import { testRule } from "../testRule";

testRule(dateNotRead, {
  clean: [
    {
      title: "a refund that is said without its day",
      tables: {
        receipts: [
          ["Shop", "Refunded"],
          ["Kessel", "yes"],
          ["Odeon", false],
        ],
      },
    },
    {
      title: "a time of day at which something is due at a stop",
      tables: {
        stops: [
          ["Stop", "Due"],
          ["Orla", "11:30"],
          ["Rail", 0.5],
        ],
      },
    },
    {
      title: "dates and blanks",
      tables: {
        pieces: [
          ["Piece", "Out", "Back"],
          ["P1", day("2026-03-02"), null],
        ],
      },
    },
    {
      title: "a date kept as text, which another rule reports",
      tables: {
        pieces: [
          ["Piece", "Out"],
          ["P1", "2026-03-05"],
        ],
      },
    },
    {
      title: "figures that could be two days, which another rule reports",
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", "03/04/26"],
        ],
      },
    },
    {
      title: "a day not known yet",
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", "TBC"],
          ["P2", "to be confirmed"],
        ],
      },
    },
    {
      title: "an error value, which another rule reports",
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", { error: "#VALUE!" }],
        ],
      },
    },
    {
      title: "words in a column that holds no dates",
      tables: {
        pieces: [
          ["Piece", "Note", "Fitting"],
          ["P1", "next week", "done"],
        ],
      },
    },
  ],
  findings: [
    {
      title: "words and impossible days",
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", "next week"],
          ["P2", "30 Feb 2026"],
          ["P3", true],
          ["P4", -5],
        ],
      },
      expect: [
        { at: "pieces!B2", messageId: "noDay", data: { given: "next week" } },
        { at: "pieces!B3", messageId: "noDay", data: { given: "30 Feb 2026" } },
        { at: "pieces!B4", messageId: "noDay", data: { given: "TRUE" } },
        { at: "pieces!B5", messageId: "noDay", data: { given: "-5" } },
      ],
    },
    {
      title: "a weekday that is not the date's (2026-03-05 is a Thursday)",
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", "Mon 5 Mar 2026"],
        ],
      },
      expect: [{ at: "pieces!B2", messageId: "wrongWeekday", data: { given: "Mon 5 Mar 2026" } }],
    },
    {
      title: "a day without its year: the first on or after Out, with its weekday (2026-11-20 is a Friday)",
      tables: {
        pieces: [
          ["Piece", "Out", "Due"],
          ["P1", day("2026-11-09"), "Fri 20 Nov"],
          ["P2", day("2026-11-09"), "3 Jan"],
          ["P3", null, "20th March"],
        ],
      },
      expect: [
        {
          at: "pieces!C2",
          messageId: "noYear",
          data: { given: "Fri 20 Nov", likely: "2026-11-20" },
          suggestions: [{ "pieces!C2": day("2026-11-20") }],
        },
        {
          at: "pieces!C3",
          messageId: "noYear",
          data: { likely: "2027-01-03" },
          suggestions: [{ "pieces!C3": day("2027-01-03") }],
        },
        {
          at: "pieces!C4",
          messageId: "noYear",
          data: { likely: "2026-03-20" },
          suggestions: [{ "pieces!C4": day("2026-03-20") }],
        },
      ],
    },
    {
      title: "terms where the day belongs: a formula counts them, where the row has all it takes",
      tables: {
        pieces: [
          ["Piece", "Out", "Due"],
          ["P1", day("2026-03-02"), "7 days"],
          ["P2", null, "7 days"],
          ["P3", day("2026-03-02"), "3 working days after shoot"],
        ],
      },
      expect: [
        {
          at: "pieces!C2",
          messageId: "terms",
          data: { given: "7 days" },
          suggestions: [{ "pieces!C2": '=TACK.DUE(B2,"7 days")' }],
        },
        { at: "pieces!C3", messageId: "noDay" },
        { at: "pieces!C4", messageId: "noDay" },
      ],
    },
    {
      title: "a Back that says yes instead of when",
      tables: {
        pieces: [
          ["Piece", "Back"],
          ["P1", "yes"],
          ["P2", "returned"],
        ],
      },
      expect: [
        { at: "pieces!B2", messageId: "backNoDay", data: { given: "yes" } },
        { at: "pieces!B3", messageId: "backNoDay", data: { given: "returned" } },
      ],
    },
  ],
});
