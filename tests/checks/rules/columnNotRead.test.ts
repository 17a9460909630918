import { columnNotRead } from "../../../src/checks/rules/columnNotRead";
import { day } from "../day";
import { testRule } from "../testRule";

const OUT = day("2026-03-02");
const DUE = day("2026-03-16");

testRule(columnNotRead, {
  clean: [
    {
      title: "a table with all its columns, and one of its own",
      tables: {
        pieces: [
          ["Piece", "Lender", "Value", "Out", "Due", "Rack"],
          ["P1", "Maison Orla", 900, OUT, DUE, "north rack"],
          ["P2", "Maison Orla", 400, OUT, DUE, "north rack"],
        ],
      },
      unread: { pieces: ["Rack"] },
    },
    {
      title: "a table that has no lenders, and nothing that could be one",
      tables: {
        pieces: [
          ["Piece", "Value", "Out", "Due", "Steamed", "Story"],
          ["P1", 900, OUT, DUE, "x", "worn by the aunt"],
          ["P2", 400, OUT, DUE, "x", "from the attic"],
        ],
      },
      unread: { pieces: ["Steamed", "Story"] },
    },
    {
      title: "sizes and counts beside no value",
      tables: {
        pieces: [
          ["Piece", "Lender", "Out", "Due", "Heel", "Waist"],
          ["P1", "Maison Orla", OUT, DUE, 9, 28],
          ["P2", "Kessel", OUT, DUE, 11, 30],
        ],
      },
      unread: { pieces: ["Heel", "Waist"] },
    },
    {
      title: "two columns for a remark, of which the first is read",
      tables: {
        pieces: [
          ["Piece", "Lender", "Value", "Out", "Due", "Note", "Remark"],
          ["P1", "Maison Orla", 900, OUT, DUE, "", ""],
        ],
      },
      contested: { pieces: { note: ["Note", "Remark"] } },
    },
  ],
  findings: [
    {
      title: "lenders, values and days under headings that mean nothing",
      tables: {
        pieces: [
          ["Piece", "From", "Ins £", "Gone", "Wanted back"],
          ["P1", "Maison Orla", 900, OUT, "16 Mar 2026"],
          ["P2", "Kessel", "£1,250", OUT, "03/04/26"],
          ["P3", "maison orla", 400, OUT, DUE],
        ],
      },
      unread: { pieces: ["From", "Ins £", "Gone", "Wanted back"] },
      expect: [
        { at: "pieces!B1", messageId: "missing", data: { heading: "From", field: "Lender" } },
        { at: "pieces!C1", messageId: "missing", data: { heading: "Ins £", field: "Value" } },
        { at: "pieces!D1", messageId: "missing", data: { heading: "Gone", field: "Out" } },
        { at: "pieces!E1", messageId: "missing", data: { heading: "Wanted back", field: "Due" } },
      ],
    },
    {
      title: "two headings that could be one thing, in any kind of table",
      tables: {
        pieces: [
          ["Piece", "Lender", "Out", "Due", "Value", "Insured value"],
          ["P1", "Maison Orla", OUT, DUE, 900, 950],
        ],
        looks: [
          ["Look", "Change", "Changing"],
          [1, 15, 20],
        ],
      },
      contested: { pieces: { value: ["Value", "Insured value"] }, looks: { change: ["Change", "Changing"] } },
      expect: [
        {
          at: "pieces!E1",
          messageId: "undecided",
          data: { heading: "Value", other: "Insured value", field: "Value" },
        },
        { at: "looks!B1", messageId: "undecided", data: { heading: "Change", other: "Changing", field: "Change" } },
      ],
    },
  ],
});
