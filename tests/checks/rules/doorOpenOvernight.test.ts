import { doorOpenOvernight } from "../../../src/checks/rules/doorOpenOvernight";
import { testRule } from "../testRule";

const heading = ["Stop", "Open", "Close"] as const;

testRule(doorOpenOvernight, {
  clean: [
    {
      title: "doors open by day, bare hours among them",
      tables: {
        stops: [heading, ["Orla", "9-6", null], ["Rail", 9 / 24, 18 / 24], ["Vela", "9", "6"], ["Nord", null, null]],
      },
    },
    { title: "a place that is open at night", tables: { stops: [heading, ["Bar Nove", "18:00", "02:00"]] } },
    {
      title: "all day and all night, and times that cannot be read",
      tables: { stops: [heading, ["Depot", "24h", null], ["Orla", "early", 6 / 24]] },
    },
  ],
  findings: [
    {
      title: "a closing time that is a morning",
      tables: { stops: [heading, ["Orla", 9 / 24, 6 / 24]] },
      expect: [
        {
          at: "stops!C2",
          messageId: "overnight",
          data: { opens: "09:00", closes: "06:00", evening: "18:00" },
          suggestions: [{ "stops!C2": 0.75 }],
        },
      ],
    },
    {
      title: "a span in one cell, among lenders",
      tables: {
        lenders: [
          ["Lender", "Open"],
          ["Orla", "10:00-05:30"],
        ],
      },
      expect: [{ at: "lenders!B2", messageId: "overnight", data: { closes: "05:30", evening: "17:30" } }],
    },
  ],
});
