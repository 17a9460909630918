import { dueOnClosedDay } from "../../../src/checks/rules/dueOnClosedDay";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = ["Piece", "Lender", "Out", "Due", "Back", "Settled", "Extended to"];
const out = day("2026-03-02");
const saturday = day("2026-03-07");
const friday = day("2026-03-13");
/** Thursday and Friday. */
const closed = { table: "ClosedDays", rows: [["Closed"], [friday - 1], [friday]] };
const lenders = [
  ["Lender", "Kind", "Closed weekdays"],
  ["Maison Orla", "Press office", "Sun, Mon"],
  ["Kessel", "Shop", null],
  ["Halden", "Showroom", "whenever"],
  ["Quill", "Private", "none"],
] as const;

testRule(dueOnClosedDay, {
  clean: [
    {
      title: "a working day",
      tables: { pieces: [pieces, ["P1", "Corbel", out, day("2026-03-06"), null, null, null]] },
    },
    {
      title: "a Saturday with a lender that closes on Sunday and Monday",
      tables: { pieces: [pieces, ["P1", "MAISON ORLA", out, saturday, null, null, null]], lenders },
    },
    {
      title: "a weekend with a shop, and with a lender that never closes",
      tables: {
        pieces: [
          pieces,
          ["P1", "Kessel", out, saturday, null, null, null],
          ["P2", "Quill", out, saturday, null, null, null],
        ],
        lenders,
      },
    },
    {
      title: "closed weekdays that cannot be read, which another rule reports",
      tables: { pieces: [pieces, ["P1", "Halden", out, saturday, null, null, null]], lenders },
    },
    {
      title: "a piece that is back or settled",
      tables: {
        pieces: [
          pieces,
          ["P1", "Corbel", out, saturday, day("2026-03-04"), null, null],
          ["P2", "Corbel", out, saturday, null, "bought", null],
        ],
      },
    },
    {
      title: "a due day that is past, when being late is what matters",
      tables: { pieces: [pieces, ["P1", "Corbel", day("2026-02-20"), day("2026-03-01"), null, null, null]] },
    },
    {
      title: "no lender, or one's own piece",
      tables: {
        pieces: [pieces, ["P1", null, out, saturday, null, null, null], ["P2", "own", out, saturday, null, null, null]],
      },
    },
    {
      title: "a due day kept as text",
      tables: { pieces: [pieces, ["P1", "Corbel", out, "7 Mar 2026", null, null, null]] },
    },
    {
      title: "a closed day with a shop, which is open on holidays too",
      tables: { pieces: [pieces, ["P1", "Kessel", out, friday, null, null, null]], lenders },
      beside: { Job: closed },
    },
    {
      title: "the day after a closed one",
      tables: { pieces: [pieces, ["P1", "Corbel", out, friday + 3, null, null, null]] },
      beside: { Job: closed },
    },
  ],
  findings: [
    {
      title: "a listed closed day, with the working day before it first",
      tables: { pieces: [pieces, ["P1", "Corbel", out, friday, null, null, null]] },
      beside: { Job: closed },
      expect: [
        {
          at: "pieces!D2",
          messageId: "listed",
          data: { due: "2026-03-13", list: "Job!A1", before: "2026-03-11", after: "2026-03-16" },
          suggestions: [{ "pieces!D2": friday - 2 }, { "pieces!D2": friday + 3 }],
        },
      ],
    },
    {
      title: "a listed closed day with no working day before it since the piece went out",
      tables: { pieces: [pieces, ["P1", "Corbel", friday - 1, friday, null, null, null]] },
      beside: { Job: closed },
      expect: [
        {
          at: "pieces!D2",
          messageId: "listedOnlyAfter",
          data: { after: "2026-03-16" },
          suggestions: [{ "pieces!D2": friday + 3 }],
        },
      ],
    },
    {
      title: "a weekend beside a listed closed day, which the working day before has to pass over",
      tables: { pieces: [pieces, ["P1", "Corbel", out, friday + 1, null, null, null]] },
      beside: { Job: closed },
      expect: [
        {
          at: "pieces!D2",
          messageId: "closed",
          data: { weekday: "Saturday", before: "2026-03-11" },
          suggestions: [{ "pieces!D2": friday - 2 }, { "pieces!D2": friday + 3 }],
        },
      ],
    },
    {
      title: "a Saturday with a lender of whom nothing is listed",
      tables: { pieces: [pieces, ["P1", "Corbel", out, saturday, null, null, null]] },
      expect: [
        {
          at: "pieces!D2",
          messageId: "closed",
          data: { due: "2026-03-07", weekday: "Saturday", lender: "Corbel", before: "2026-03-06", after: "2026-03-09" },
          suggestions: [{ "pieces!D2": day("2026-03-06") }, { "pieces!D2": day("2026-03-09") }],
        },
      ],
    },
    {
      title: "a Monday with a lender that closes on Sunday and Monday, also before the piece is out",
      tables: { pieces: [pieces, ["P1", "Maison Orla", null, day("2026-03-16"), null, null, null]], lenders },
      expect: [
        {
          at: "pieces!D2",
          messageId: "closed",
          data: { weekday: "Monday", before: "2026-03-14", after: "2026-03-17" },
          suggestions: [{ "pieces!D2": day("2026-03-14") }, { "pieces!D2": day("2026-03-17") }],
        },
      ],
    },
    {
      title: "a closed day right after the piece goes out, when only the day after is left",
      tables: { pieces: [pieces, ["P1", "Corbel", day("2026-03-13"), day("2026-03-14"), null, null, null]] },
      expect: [
        {
          at: "pieces!D2",
          messageId: "onlyAfter",
          data: { after: "2026-03-16" },
          suggestions: [{ "pieces!D2": day("2026-03-16") }],
        },
      ],
    },
    {
      title: "the extension where there is one",
      tables: { pieces: [pieces, ["P1", "Corbel", out, day("2026-03-06"), null, null, saturday]] },
      expect: [
        {
          at: "pieces!G2",
          messageId: "closed",
          suggestions: [{ "pieces!G2": day("2026-03-06") }, { "pieces!G2": day("2026-03-09") }],
        },
      ],
    },
    {
      title: "a formula's day, without suggesting to write over it",
      tables: { pieces: [pieces, ["P1", "Corbel", out, saturday, null, null, null]] },
      formulas: { "pieces!D2": "=C2+5" },
      expect: [{ at: "pieces!D2", messageId: "closed" }],
    },
  ],
});
