import { dateUndecided } from "../../../src/checks/rules/dateUndecided";
import { day } from "../day";
import { testRule } from "../testRule";

const out = day("2026-03-02");

testRule(dateUndecided, {
  clean: [
    {
      title: "tbc as Due of a piece that is not out",
      tables: {
        pieces: [
          ["Piece", "Out", "Due"],
          ["P1", null, "tbc"],
          ["P2", day("2026-03-09"), "?"],
        ],
      },
    },
    {
      title: "tbc as Due of a piece that is back or settled",
      tables: {
        pieces: [
          ["Piece", "Out", "Due", "Back", "Settled"],
          ["P1", out, "tbc", out + 1, null],
          ["P2", out, "tbc", null, "bought"],
        ],
      },
    },
    {
      title: "tbc as Due where the loan is extended to a day",
      tables: {
        pieces: [
          ["Piece", "Out", "Due", "Extended to"],
          ["P1", out, "tbc", day("2026-03-12")],
        ],
      },
    },
    {
      title: "tbc as Extended to where Due still stands",
      tables: {
        pieces: [
          ["Piece", "Out", "Due", "Extended to"],
          ["P1", out, day("2026-03-12"), "tbc"],
        ],
      },
    },
    {
      title: "tbc in a request or a look",
      tables: {
        requests: [
          ["Lender", "Needed by"],
          ["Maison Orla", "tbc"],
        ],
        looks: [
          ["Look", "Date"],
          [1, "tbc"],
        ],
      },
    },
    {
      title: "a blank",
      tables: {
        pieces: [
          ["Piece", "Out", "Due", "Back"],
          ["P1", out, null, null],
        ],
      },
    },
  ],
  findings: [
    {
      title: "a word in Out or Back, where a blank says the same",
      tables: {
        pieces: [
          ["Piece", "Out", "Back"],
          ["P1", "tbc", null],
          ["P2", out, "-"],
        ],
      },
      expect: [
        { at: "pieces!B2", messageId: "leaveBlank", data: { given: "tbc" }, suggestions: [{ "pieces!B2": null }] },
        { at: "pieces!C3", messageId: "leaveBlank", data: { given: "-" }, suggestions: [{ "pieces!C3": null }] },
      ],
    },
    {
      title: "a Due still open although the piece is out",
      tables: {
        pieces: [
          ["Piece", "Out", "Due"],
          ["P1", out, "tbc"],
        ],
      },
      expect: [{ at: "pieces!C2", messageId: "dueOpen", data: { given: "tbc", out: "2026-03-02" } }],
    },
  ],
});
