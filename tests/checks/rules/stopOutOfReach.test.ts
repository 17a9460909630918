import { stopOutOfReach } from "../../../src/checks/rules/stopOutOfReach";
import { testRule } from "../testRule";

const heading = ["Stop", "Open", "Close", "Minutes", "Receives until"] as const;

testRule(stopOutOfReach, {
  clean: [
    {
      title: "visits that fit",
      tables: {
        stops: [
          heading,
          ["Studio", "09:00", "19:00"],
          ["Orla", "10:00", "11:00", 60],
          ["Rail", "10-13, 14-18", null, 90],
        ],
      },
    },
    { title: "no opening times", tables: { stops: [heading, ["Studio"], ["Orla", null, null, 500]] } },
    {
      title: "a start that may be left at any time",
      tables: { stops: [heading, ["Studio"], ["Orla", "06:00", "07:00"]] },
    },
    {
      title: "cells that cannot be read, which have rules of their own",
      tables: {
        stops: [heading, ["Studio", "noonish"], ["Orla", "early", null, 20], ["Rail", "10:00", "10:30", "long"]],
      },
    },
    {
      title: "two spans that touch",
      tables: { stops: [heading, ["Studio"], ["Orla", "10-11, 11-12", null, 90]] },
    },
  ],
  findings: [
    {
      title: "a visit longer than any span",
      tables: { stops: [heading, ["Studio"], ["Orla", "10-11, 14-15", null, 90]] },
      expect: [{ at: "stops!D3", messageId: "tooShort", data: { minutes: 90 } }],
    },
    {
      title: "a last hour for returns that leaves too little",
      tables: { stops: [heading, ["Studio"], ["Orla", "10:00", "18:00", 30, "10:15"]] },
      expect: [{ at: "stops!D3", messageId: "tooShort", data: { minutes: 30 } }],
    },
    {
      title: "a door that closes before the start is left",
      tables: { stops: [heading, ["Studio", "09:00", "19:00"], ["Orla", "07:00", "09:10", 20]] },
      expect: [{ at: "stops!C3", messageId: "tooLate", data: { closes: "09:10", start: "Studio", leaves: "09:00" } }],
    },
  ],
});
