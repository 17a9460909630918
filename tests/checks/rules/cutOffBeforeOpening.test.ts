import { cutOffBeforeOpening } from "../../../src/checks/rules/cutOffBeforeOpening";
import { testRule } from "../testRule";

const stops = ["Stop", "Open", "Close", "Cut-off"] as const;
const lenders = ["Lender", "Open", "Close", "Cut-off", "Receives until"] as const;

testRule(cutOffBeforeOpening, {
  clean: [
    {
      title: "a cut-off while the door is open, or after it closes",
      tables: { stops: [stops, ["Orla", "10:00", "18:00", "15:00"], ["Rail", 0.4, 0.7, 0.8]] },
    },
    { title: "a cut-off as the door opens", tables: { stops: [stops, ["Orla", "10-13, 14-18", null, "10:00"]] } },
    {
      title: "blanks and words",
      tables: { lenders: [lenders, ["Orla", null, null, "15:00"], ["Rail", "tbc", null, 0.1]] },
    },
  ],
  findings: [
    {
      title: "a stop's cut-off before its door opens",
      tables: { stops: [stops, ["Orla", "10-13, 14-18", null, "09:30"]] },
      expect: [{ at: "stops!D2", messageId: "passed", data: { heading: "Cut-off", time: "09:30", opens: "10:00" } }],
    },
    {
      title: "a lender's last hour for returns before it opens",
      tables: { lenders: [lenders, ["Orla", "10:00", "18:00", "16:00", "09:00"]] },
      expect: [{ at: "lenders!E2", messageId: "passed", data: { heading: "Receives until" } }],
    },
  ],
});
