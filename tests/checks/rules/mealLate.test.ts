import { mealLate } from "../../../src/checks/rules/mealLate";
import { day } from "../day";
import { testRule } from "../testRule";

const shoot = day("2026-03-10");
const looks = (...shooting: readonly number[]) => [
  ["Look", "Talent", "Shooting", "Date"],
  ...shooting.map((minutes, index) => [index + 1, "Ana", minutes, shoot]),
];
const days = ["Date", "Call", "Meal"];
const nine = 9 / 24;

testRule(mealLate, {
  clean: [
    { title: "a shot that ends when the meal is due", tables: { looks: looks(60, 60), day: [days, [shoot, nine, 1]] } },
    {
      title: "a shot that ends before it, and one that would not",
      tables: { looks: looks(50, 60), day: [days, [shoot, nine, 1]] },
    },
    { title: "a day that is over before it", tables: { looks: looks(60, 60), day: [days, [shoot, nine, 6]] } },
    { title: "a day without a rule for the meal", tables: { looks: looks(400, 60), day: [days, [shoot, nine, null]] } },
    { title: "a meal typed as a time of day", tables: { looks: looks(400, 60), day: [days, [shoot, nine, 13 / 24]] } },
    { title: "a day that is past", asOf: shoot + 1, tables: { looks: looks(80, 10), day: [days, [shoot, nine, 1]] } },
    { title: "a day without a call", tables: { looks: looks(80, 10), day: [days, [shoot, null, 1]] } },
  ],
  findings: [
    {
      title: "a late meal of which the list of people says when it is due",
      tables: { looks: looks(80, 10), day: [days, [shoot, nine, null]] },
      beside: {
        People: {
          table: "People",
          rows: [
            ["What", "How many"],
            ["meal after hours", 1],
            ["meal minutes", 45],
          ],
        },
      },
      expect: [{ at: "People!B2", messageId: "late", data: { due: "10:00", from: "10:20" } }],
    },
    {
      title: "a first shot that lasts past the hour the meal is due",
      tables: { looks: looks(80, 10), day: [days, [shoot, nine, 1]] },
      expect: [{ at: "day!C2", messageId: "late", data: { due: "10:00", from: "10:20", minutes: "20 minutes" } }],
    },
    {
      title: "the same where the hours are text",
      tables: { looks: looks(61, 10), day: [days, [shoot, "09:00", "1"]] },
      expect: [{ at: "day!C2", messageId: "late", data: { from: "10:01", minutes: "1 minute" } }],
    },
  ],
});
