import { lenderCellNotRead } from "../../../src/checks/rules/lenderCellNotRead";
import { testRule } from "../testRule";

const lenders = ["Lender", "Closed weekdays", "Courier days", "Open", "Close"];

testRule(lenderCellNotRead, {
  clean: [
    {
      title: "cells that can be read",
      tables: {
        lenders: [
          lenders,
          ["Halden", "Sun, Mon", 1, "10:00", "18:00"],
          ["Quill", "weekends", "2 days", "10-13, 14-18", null],
        ],
      },
    },
    { title: "blanks", tables: { lenders: [lenders, ["Halden", null, null, null, null]] } },
    {
      title: "doors with no hours of their own",
      tables: {
        lenders: [
          lenders,
          ["Halden", "by appointment", null, "by appointment", null],
          ["Quill", "tbc", "?", "call first", null],
          ["Orme", null, null, "sur rendez-vous", null],
        ],
      },
    },
    {
      title: "an error value, which another rule reports",
      tables: { lenders: [lenders, ["Halden", { error: "#N/A" }, null, null, null]] },
    },
  ],
  findings: [
    {
      title: "weekdays, courier days and hours that cannot be read",
      tables: {
        lenders: [
          lenders,
          ["Halden", "every other Monday", "soon", "early", "late"],
          ["Quill", null, 1.5, "10:00", "late"],
        ],
      },
      expect: [
        {
          at: "lenders!B2",
          messageId: "notRead",
          data: {
            sentence:
              'Closed weekdays: "every other Monday" cannot be used; give weekdays such as "Sun, Mon" or "Sat-Mon", "weekends" or "none".',
          },
        },
        { at: "lenders!C2", messageId: "notRead" },
        { at: "lenders!D2", messageId: "notRead" },
        { at: "lenders!C3", messageId: "notRead" },
        { at: "lenders!E3", messageId: "notRead" },
      ],
    },
    {
      title: "a lender that never opens",
      tables: {
        lenders: [
          ["Lender", "Closed weekdays"],
          ["Halden", "Mon-Sun"],
        ],
      },
      expect: [{ at: "lenders!B2", messageId: "neverOpen" }],
    },
  ],
});
