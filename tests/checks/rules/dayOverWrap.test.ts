import { dayOverWrap } from "../../../src/checks/rules/dayOverWrap";
import { day } from "../day";
import { testRule } from "../testRule";

const shoot = day("2026-03-10");
// Changed 09:00 to 09:20 and 09:20 to 09:40, shot 09:20 to 09:50 and 09:50 to 10:20.
const looks = [
  ["Look", "Talent", "Change", "Shooting", "Date"],
  [1, "Ana", 20, 30, shoot],
  [2, "Bo", 20, 30, shoot],
] as const;
const days = ["Date", "Call", "Wrap", "Dressers"];
const nine = 9 / 24;

testRule(dayOverWrap, {
  clean: [
    { title: "a day that ends by wrap", tables: { looks, day: [days, [shoot, nine, 10.5 / 24, 1]] } },
    { title: "a day that ends at wrap", tables: { looks, day: [days, [shoot, nine, "10:20", null]] } },
    { title: "a wrap the next morning", tables: { looks, day: [days, [shoot, 22 / 24, 1 / 24, null]] } },
    { title: "a day without a wrap, or without a call", tables: { looks, day: [days, [shoot, nine, null, 1]] } },
    {
      title: "a day that has no call, so that its hours are not known",
      tables: { looks, day: [days, [shoot, null, 9.5 / 24, 1]] },
    },
    { title: "a day without a day table", tables: { looks } },
    {
      title: "two dressers in the list of people, who end in time what one would not",
      tables: { looks, day: [days, [shoot, nine, 10.2 / 24, null]] },
      beside: {
        People: {
          table: "People",
          rows: [
            ["What", "How many"],
            ["dressers", 2],
            ["cameras", 2],
          ],
        },
      },
    },
    { title: "a day that is past", asOf: shoot + 1, tables: { looks, day: [days, [shoot, nine, 9.5 / 24, 1]] } },
    {
      title: "a day that cannot be planned, which other rules report",
      tables: { looks: [looks[0], [1, "Ana", "long", 30, shoot]], day: [days, [shoot, nine, 9.1 / 24, 1]] },
    },
  ],
  findings: [
    {
      title: "a day whose call and wrap stand beside the words, with the people that are listed",
      tables: { looks },
      beside: {
        Day: {
          rows: [
            ["Call", nine],
            ["Wrap", "10:00"],
          ],
        },
        People: {
          table: "People",
          rows: [
            ["What", "How many"],
            ["dressers", 1],
            ["chairs", 3],
          ],
        },
      },
      expect: [{ at: "Day!B2", messageId: "over", data: { minutes: "20 minutes", chairs: "3 chairs" } }],
    },
    {
      title: "a day that runs over",
      tables: { looks, day: [days, [shoot, nine, 10 / 24, null]] },
      expect: [
        {
          at: "day!C2",
          messageId: "over",
          data: { ends: "10:20", minutes: "20 minutes", dressers: "1 dresser", chairs: "1 chair" },
        },
      ],
    },
    {
      title: "the one day of two that runs over, with the people its row gives",
      tables: {
        looks: [...looks, [3, "Ana", 20, 30, shoot + 1]],
        day: [days, [shoot, nine, 10 / 24, 2], [shoot + 1, nine, 10 / 24, 1]],
      },
      expect: [{ at: "day!C2", messageId: "over", data: { dressers: "2 dressers" } }],
    },
  ],
});
