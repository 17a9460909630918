import { dayPlan } from "../../../src/domain/day/dayPlan";
import { minutesSpareAtWrap } from "../../../src/domain/day/minutesSpareAtWrap";
import { sampleDay, sampleLook } from "./sampleLook";

function spare(call: number, minutes: number, wrap: number): unknown {
  const plan = dayPlan(sampleDay([sampleLook(1, { shootingMinutes: minutes })], { call: call / 24 }));
  return plan.ok ? minutesSpareAtWrap(plan.value, wrap / 24) : plan;
}

test.each([
  ["time left over", 9, 90, 11, 30],
  ["the day fits to the minute", 9, 120, 11, 0],
  ["over is below 0", 9, 150, 11, -30],
  ["a wrap earlier than call is the next morning's", 20, 300, 2, 60],
  ["a wrap at midnight ends the day", 20, 300, 0, -60],
  ["a wrap counted past midnight is as typed", 20, 300, 26, 60],
  ["a wrap at call leaves nothing", 9, 30, 9, -30],
])("%s", (_, call, minutes, wrap, minutesSpare) => {
  expect(spare(call, minutes, wrap)).toEqual({ ok: true, value: minutesSpare });
});

test("without looks there is nothing to compute from", () => {
  const plan = dayPlan(sampleDay([]));
  expect(plan.ok && minutesSpareAtWrap(plan.value, 0.5)).toMatchObject({
    ok: false,
    problem: { reason: "nothing-to-compute" },
  });
});
