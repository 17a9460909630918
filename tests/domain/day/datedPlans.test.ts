import { datedPlans } from "../../../src/domain/day/datedPlans";
import { sampleLook } from "./sampleLook";

test("each day is planned by itself, so two days may number their looks alike", () => {
  const looks = [sampleLook(1, { date: 46111 }), sampleLook(1, { date: 46112, arrivesAt: 0.25 })];
  const days = datedPlans(looks);
  expect(days.ok && days.value.map(({ date, plan }) => [date, plan.call])).toEqual([
    [46111, 9 / 24],
    [46112, 0.25],
  ]);
});

test("a day that cannot be planned is the problem", () => {
  expect(datedPlans([sampleLook(1, { date: 46111 }), sampleLook(1, { date: 46111 })])).toMatchObject({
    ok: false,
    problem: { reason: "look-repeated" },
  });
});
