import { stopCellNotRead } from "../../../src/checks/rules/stopCellNotRead";
import { testRule } from "../testRule";

const heading = ["Stop", "Open", "Close", "Receives until", "Cut-off", "Latitude", "Longitude"] as const;

testRule(stopCellNotRead, {
  clean: [
    { title: "times and places", tables: { stops: [heading, ["Orla", 0.375, "18:00", "17:00", 0.7, 51.5, "0.12 W"]] } },
    { title: "several spans in Open", tables: { stops: [heading, ["Orla", "10-13, 14-18", null]] } },
    { title: "lists of equal length", tables: { stops: [heading, ["Orla", "10, 14", "13, 18"]] } },
    { title: "blanks, also sent as 0", tables: { stops: [heading, ["Studio"], ["Orla", 0, 0, 0, 0, 0, 0]] } },
    { title: "an error, which has a rule of its own", tables: { stops: [heading, ["Orla", { error: "#N/A" }]] } },
  ],
  findings: [
    {
      title: "opening times that are none",
      tables: { stops: [heading, ["Orla", "ring first", "late", "evening", "soon", 95, "west"]] },
      expect: [
        { at: "stops!B2", messageId: "notRead" },
        { at: "stops!D2", messageId: "notRead" },
        { at: "stops!E2", messageId: "notRead" },
        { at: "stops!F2", messageId: "notRead" },
        { at: "stops!G2", messageId: "notRead" },
      ],
    },
    {
      title: "a Close that is none beside an Open that is one",
      tables: { stops: [heading, ["Orla", "10:00", "evening"]] },
      expect: [
        {
          at: "stops!C2",
          messageId: "notRead",
          data: {
            sentence: 'Close: "evening" cannot be used; give times such as 10:00, or spans such as "10-13, 14-18".',
          },
        },
      ],
    },
  ],
});
