import { coverPassed } from "../../../src/checks/rules/coverPassed";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = ["Piece", "Value", "Currency", "Out", "Back", "Quantity"];
const days = ["Date", "Call", "Cover"];
const out = day("2026-03-02");
const rail = [
  pieces,
  ["P1", 600, "GBP", out, day("2026-03-10"), null],
  ["P2", 250.5, "GBP", day("2026-03-09"), null, 2],
];

testRule(coverPassed, {
  clean: [
    {
      title: "a cover that is enough, or just enough",
      tables: { pieces: rail, day: [days, [day("2026-03-09"), null, 1101], [day("2026-03-06"), null, 600]] },
    },
    { title: "a day that is over", tables: { pieces: rail, day: [days, [day("2026-03-03"), null, 100]] } },
    {
      title: "no cover, a cover of 0 or one that cannot be read",
      tables: { pieces: rail, day: [days, [day("2026-03-09"), null, null], [null, null, 0], [null, null, "ask Ada"]] },
    },
    {
      title: "a date that cannot be read, which another rule reports",
      tables: { pieces: rail, day: [days, ["09/03/26", null, 100]] },
    },
    {
      title: "values in two currencies, of which none is the cover's",
      tables: {
        pieces: [...rail, ["P3", 5000, "EUR", out, null, null]],
        day: [days, [day("2026-03-09"), null, 100]],
      },
    },
    {
      title: "an insurance limit on a sheet that is enough, one in another currency, and one that cannot be read",
      tables: { pieces: rail },
      beside: {
        Job: { rows: [["Insurance limit, all pieces", 1101]] },
        Old: { rows: [["Insurance limit", "€5"]] },
        Notes: { rows: [["Cover", "100k"]] },
      },
    },
    {
      title: "a day whose own cover is higher than the one of every day",
      tables: {
        pieces: [
          pieces,
          ["P1", 600, "GBP", out, null, null],
          ["P2", 900, "GBP", day("2026-03-09"), day("2026-03-09"), 1],
        ],
        day: [days, [day("2026-03-09"), null, 1500], [null, null, 600]],
      },
    },
    {
      title: "a sheet without a cover",
      tables: {
        pieces: rail,
        day: [
          ["Date", "Call"],
          [day("2026-03-09"), 0.4],
        ],
      },
    },
  ],
  findings: [
    {
      title: "more than the insurance limit that stands on a sheet",
      tables: { pieces: rail },
      beside: { Job: { rows: [["Harbour Light"], ["Insurance limit, all pieces", "£1,000"]] } },
      expect: [{ at: "Job!B2", messageId: "passed", data: { value: 1101, day: "2026-03-09", over: 101, cover: 1000 } }],
    },
    {
      title: "more than the cover on its day; the back day counts",
      tables: { pieces: rail, day: [days, [day("2026-03-10"), null, 1100]] },
      expect: [{ at: "day!C2", messageId: "passed", data: { value: 1101, day: "2026-03-10", over: 1, cover: 1100 } }],
    },
    {
      title: "a cover for every day, passed on the highest of those to come, the first of equals",
      tables: {
        pieces: rail,
        day: [
          ["Call", "Cover"],
          [0.4, 1000],
        ],
      },
      expect: [{ at: "day!B2", messageId: "passed", data: { value: 1101, day: "2026-03-09", over: 101 } }],
    },
    {
      title: "a cover for every day that is passed today already",
      tables: {
        pieces: [pieces, ["P1", 600, null, out, null, null]],
        day: [
          ["Call", "Cover"],
          [0.4, 500],
        ],
      },
      expect: [{ at: "day!B2", messageId: "passed", data: { value: 600, day: "2026-03-05" } }],
    },
  ],
});
