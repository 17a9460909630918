import { stopClosesTooSoon } from "../../../src/checks/rules/stopClosesTooSoon";
import { testRule } from "../testRule";

const heading = ["Stop", "Open", "Close", "Minutes", "Latitude", "Longitude"] as const;
// A tenth of a degree of latitude is 11.1195 km as the crow flies on the sphere of 6371.0088 km: 43.4 minutes at 20 km an hour, 1.3 as long.
const studio = ["Studio", "09:00", "19:00", null, 51.5, -0.1] as const;
const north = (name: string, open: string | null, close: string | null, tenths: number, minutes: number | null = 10) =>
  [name, open, close, minutes, 51.5 + tenths / 10, -0.1] as const;

testRule(stopClosesTooSoon, {
  clean: [
    {
      title: "stops that can be met as listed",
      tables: { stops: [heading, studio, north("Orla", "09:00", "10:00", 1), north("Rail", "10:00", "18:00", 2)] },
    },
    {
      title: "a start that may be left at any time, and doors that are always open",
      tables: {
        stops: [
          heading,
          ["Studio", null, null, null, 51.5, -0.1],
          north("Orla", null, null, 9),
          north("Rail", "06:00", "07:00", 1),
        ],
      },
    },
    {
      title: "a door that closes before the start is left, which is another rule's",
      tables: { stops: [heading, studio, north("Orla", "07:00", "08:30", 5)] },
    },
    {
      title: "places and times that cannot be read",
      tables: {
        stops: [
          heading,
          studio,
          ["Orla", "09:00", "09:10", 10, "north", -0.1],
          ["Rail", "early", null, 10, 51.6, -0.1],
        ],
      },
    },
    {
      title: "a start without a place",
      tables: { stops: [heading, ["Studio", "09:00", "19:00", null, null, null], north("Orla", "09:00", "09:10", 5)] },
    },
  ],
  findings: [
    {
      title: "a door that closes before one can be there from the start",
      tables: { stops: [heading, studio, north("Orla", "09:00", "09:50", 1)] },
      expect: [
        {
          at: "stops!C3",
          messageId: "fromStart",
          data: { closes: "09:50", from: "Studio", leaves: "09:00", minutes: 43, speed: 20 },
        },
      ],
    },
    {
      title: "a door that closes before one can be there from the stop listed before it, but not from the start",
      tables: {
        stops: [heading, studio, north("Orla", "10:30", "18:00", 1, 20), north("Rail", "09:00", "11:00", 0.5)],
      },
      expect: [
        {
          at: "stops!C4",
          messageId: "fromBefore",
          data: { closes: "11:00", from: "Orla", leaves: "10:50", minutes: 22 },
        },
      ],
    },
    {
      title: "one that cannot be met, and not the next, to which one goes from where one is",
      tables: { stops: [heading, studio, north("Far", "09:00", "10:00", 5), north("Orla", "09:00", "10:00", 1)] },
      expect: [{ at: "stops!C3", messageId: "fromStart" }],
    },
    {
      title: "hours in one column",
      tables: {
        stops: [
          ["Stop", "Open", "Latitude", "Longitude"],
          ["Studio", "9-6", 51.5, -0.1],
          ["Orla", "9-9:30", 51.6, -0.1],
        ],
      },
      expect: [{ at: "stops!B3", messageId: "fromStart" }],
    },
  ],
});
