import { lateFeeNotRead } from "../../../src/checks/rules/lateFeeNotRead";
import { testRule } from "../testRule";

const rows = (...fees: readonly (string | number | null)[]) => ({
  lenders: [["Lender", "Late fee"], ...fees.map((fee, place) => [`Lender ${place + 1}`, fee])],
});

testRule(lateFeeNotRead, {
  clean: [
    { title: "a share or an amount by the day, or once", tables: rows("2% a day", "£5 per day", "10% once", 0.02, 0) },
    {
      title: "none, or agreed when it comes to that",
      tables: rows("none", "no fee", "No late fee", "waived", "by agreement"),
    },
    { title: "blank or not known yet", tables: rows("", null, "tbc", "-") },
  ],
  findings: [
    {
      title: "a charge by the week, and words",
      tables: rows("10% a week", "price of the piece"),
      expect: [
        { at: "lenders!B2", messageId: "notRead", data: { given: "10% a week" } },
        { at: "lenders!B3", messageId: "notRead" },
      ],
    },
    {
      title: "an amount that does not say how often",
      tables: rows(5, "£25"),
      expect: [
        {
          at: "lenders!B2",
          messageId: "bareAmount",
          data: { given: "5" },
          suggestions: [{ "lenders!B2": "5 a day" }, { "lenders!B2": "5% a day" }, { "lenders!B2": "5 once" }],
        },
        {
          at: "lenders!B3",
          messageId: "bareAmount",
          suggestions: [{ "lenders!B3": "£25 a day" }, { "lenders!B3": "£25 once" }],
        },
      ],
    },
  ],
});
