import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { functionDocs } from "../../src/build/functionDocs.mjs";
import { dayPlan } from "../../src/domain/day/dayPlan";
import { latestMealStart } from "../../src/domain/day/latestMealStart";
import { smallestCrew } from "../../src/domain/day/smallestCrew";
import { sampleDay, sampleLook } from "../domain/day/sampleLook";
import rules from "./mealRules.json";

const WORDS: Readonly<Record<number, string>> = { 5: "five", 6: "six" };
const california = rules.california_wage_order_12;
const kingdom = rules.uk_working_time_1998;
const cautionOf = (id: string): string =>
  functionDocs()
    .find((doc) => doc.id === id)!
    .cautions.join(" ");

test("the help of DAYPLAN, DAYFIT and MEALBY names the published rules with their figures and defers to local ones", () => {
  const plan = cautionOf("DAYPLAN");
  expect(plan).toContain(`no later than ${WORDS[california.mealNoLaterThanHours]} hours after call`);
  expect(plan).toContain(`after ${WORDS[california.generalOrdersMealHours]};`);
  expect(plan).toContain(
    `${kingdom.breakMinutes} minutes' break in a day of over ${WORDS[kingdom.breakIfOverHours]} hours`,
  );
  expect(plan).toContain(`${kingdom.dailyRestHours} hours' rest`);
  expect(plan).toContain("no advice");
  expect(cautionOf("DAYFIT")).toContain(`${kingdom.dailyRestHours} hours' rest a day`);
  expect(cautionOf("DAYFIT")).toContain("no advice");
  const meal = cautionOf("MEALBY");
  const six = WORDS[california.mealNoLaterThanHours];
  expect(meal).toContain(
    `no later than ${six} hours after call, at least ${california.mealAtLeastMinutes} minutes long`,
  );
  expect(meal).toContain(`the next no later than ${WORDS[california.nextMealNoLaterThanHours]} hours after it`);
  expect(meal).toContain(`after ${WORDS[california.generalOrdersMealHours]};`);
  expect(meal).toContain(
    `${kingdom.breakMinutes} minutes' break in a day of over ${WORDS[kingdom.breakIfOverHours]} hours`,
  );
  expect(meal).toContain("no advice");
});

test("MEALBY gives California's Wage Order 12: six hours after call, and six after the last meal", () => {
  const { mealNoLaterThanHours: first, nextMealNoLaterThanHours: next } = california;
  expect(latestMealStart(8 / 24, first, null)).toBe(14 / 24);
  expect(latestMealStart(8 / 24, next, 14.5 / 24)).toBe(20.5 / 24);
});

test("on a day of half-hour shots the meal of California's Wage Order 12 begins six hours after call and not later", () => {
  const looks = Array.from({ length: 20 }, (_, index) => sampleLook(index + 1, { shootingMinutes: 30 }));
  const meal = { afterHours: california.mealNoLaterThanHours, minutes: california.mealAtLeastMinutes };
  const plan = dayPlan(sampleDay(looks, { call: 8 / 24, crew: { ...smallestCrew, meal } }));
  expect(plan.ok && plan.value.meal).toEqual({ from: 14 / 24, until: 14.5 / 24, due: 14 / 24, minutesLate: 0 });
});

const reference = join(__dirname, "../../../shared/reference/work_time_rules.json");
(existsSync(reference) ? test : test.skip)(
  "the restated figures are the collected ones (skipped where the reference folder is absent)",
  () => {
    const collected = JSON.parse(readFileSync(reference, "utf8"));
    const wageOrder = collected.california_wage_order_12;
    const { meal_no_later_than_h, meal_min, general_orders_meal_h, next_meal_no_later_than_h_after_previous } =
      wageOrder;
    expect([
      meal_no_later_than_h,
      meal_min[0],
      general_orders_meal_h,
      next_meal_no_later_than_h_after_previous,
    ]).toEqual([
      california.mealNoLaterThanHours,
      california.mealAtLeastMinutes,
      california.generalOrdersMealHours,
      california.nextMealNoLaterThanHours,
    ]);
    const { break_min, break_if_over_h, daily_rest_h } = collected.uk_wtr_1998;
    expect([break_min, break_if_over_h, daily_rest_h]).toEqual([
      kingdom.breakMinutes,
      kingdom.breakIfOverHours,
      kingdom.dailyRestHours,
    ]);
  },
);
