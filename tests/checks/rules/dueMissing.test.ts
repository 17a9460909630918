import { dueMissing } from "../../../src/checks/rules/dueMissing";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = ["Piece", "Lender", "Out", "Due", "Terms", "Shoot", "Back", "Settled"];
const out = day("2026-03-02");
const lenders = [
  ["Lender", "Terms", "Closed weekdays"],
  ["Maison Orla", "3 working days", "Sun, Mon"],
  ["Halden", "7 days", null],
  ["Quill", "soonish", null],
] as const;

testRule(dueMissing, {
  clean: [
    {
      title: "no terms anywhere: no due day yet",
      tables: { pieces: [pieces, ["P1", "Maison Orla", out, null, null, null, null, null]] },
    },
    {
      title: "terms of a piece that has no Out date yet",
      tables: { pieces: [pieces, ["P1", "Maison Orla", null, null, "7 days", null, null, null]] },
    },
    {
      title: "a due day that is there, as a date, as text or open",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", out, out + 7, "7 days", null, null, null],
          ["P2", "Halden", out, "9 Mar 2026", "7 days", null, null, null],
          ["P3", "Halden", out, "tbc", "7 days", null, null, null],
        ],
      },
    },
    {
      title: "a piece that is back or settled",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", out, null, "7 days", null, out + 2, null],
          ["P2", "Halden", out, null, "7 days", null, null, "bought"],
        ],
      },
    },
    {
      title: "terms that cannot be read, which another rule reports",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", out, null, "soonish", null, null, null],
          ["P2", "Quill", out, null, null, null, null, null],
        ],
        lenders,
      },
    },
    {
      title: "a formula that shows nothing yet",
      tables: { pieces: [pieces, ["P1", "Halden", out, null, "7 days", null, null, null]] },
      formulas: { "pieces!D2": '=IF(C2="","",TACK.DUE(C2,E2))' },
    },
    {
      title: "an Out date kept as text, which another rule reports",
      tables: { pieces: [pieces, ["P1", "Halden", "2026-03-02", null, "7 days", null, null, null]] },
    },
    {
      title: "terms after a shoot day that is there but no date",
      tables: { pieces: [pieces, ["P1", "Halden", out, null, "5 days after shoot", "10 Mar 2026", null, null]] },
    },
  ],
  findings: [
    {
      title: "terms in the row, with the formula of its own cells",
      tables: { pieces: [pieces, ["P1", null, out, null, "7 days", null, null, null]] },
      expect: [
        {
          at: "pieces!D2",
          messageId: "fromRow",
          data: { terms: "7 days" },
          suggestions: [{ "pieces!D2": "=TACK.DUE(C2,E2)" }],
        },
      ],
    },
    {
      title: "a shoot day and a lender's closed weekdays in the formula",
      tables: {
        pieces: [pieces, ["P1", "maison orla", out, null, "3 days after shoot", day("2026-03-10"), null, null]],
        lenders,
      },
      expect: [
        { at: "pieces!D2", messageId: "fromRow", suggestions: [{ "pieces!D2": '=TACK.DUE(C2,E2,F2,,"1000001")' }] },
      ],
    },
    {
      title: "the formula that the column already has, where it reads its row by headings",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", out, out + 7, "7 days", null, null, null],
          ["P2", "Halden", out, null, "2 weeks", null, null, null],
        ],
      },
      formulas: { "pieces!D2": "=TACK.DUE([@Out],[@Terms],LastShootDay,ClosedDays[Closed])" },
      expect: [
        {
          at: "pieces!D3",
          messageId: "fromRow",
          suggestions: [{ "pieces!D3": "=TACK.DUE([@Out],[@Terms],LastShootDay,ClosedDays[Closed])" }],
        },
      ],
    },
    {
      title: "a formula of its own where the column's reads one row's cells",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", out, out + 7, "7 days", null, null, null],
          ["P2", "Halden", out, null, "2 weeks", null, null, null],
        ],
      },
      formulas: { "pieces!D2": "=TACK.DUE([@Out],E2)" },
      expect: [{ at: "pieces!D3", messageId: "fromRow", suggestions: [{ "pieces!D3": "=TACK.DUE(C3,E3)" }] }],
    },
    {
      title: "a lender's terms, pointed at where they stand",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", out, null, null, null, null, null],
          ["P2", "Maison Orla", out, null, null, null, null, null],
        ],
        lenders,
      },
      expect: [
        {
          at: "pieces!D2",
          messageId: "fromLender",
          data: { lender: "Halden", terms: "7 days" },
          suggestions: [{ "pieces!D2": "=TACK.DUE(C2,'lenders'!$B$3)" }],
        },
        {
          at: "pieces!D3",
          messageId: "fromLender",
          data: { terms: "3 working days" },
          suggestions: [{ "pieces!D3": "=TACK.DUE(C3,'lenders'!$B$2,,,\"1000001\")" }],
        },
      ],
    },
    {
      title: "terms after a shoot day that nobody typed",
      tables: { pieces: [pieces, ["P1", "Halden", out, null, "5 working days after shoot", null, null, null]] },
      expect: [{ at: "pieces!D2", messageId: "needsShoot", data: { terms: "5 working days after the shoot" } }],
    },
  ],
});
