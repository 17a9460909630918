import { neededFrom } from "../../../src/domain/day/neededFrom";
import { datedDays } from "./datedDays";
import { sampleLook } from "./sampleLook";

test("a look needs its pieces from its change on, not from hair and make-up before it, and without a change from its shot on", () => {
  const [day] = datedDays([
    sampleLook(1, { talents: ["Mina"], hairMakeupMinutes: 30, changeMinutes: 15, shootingMinutes: 30 }),
    sampleLook(2, { talents: ["Teo"], shootingMinutes: 30 }),
  ]);
  expect(day!.plan.looks.map(neededFrom)).toEqual([9.5 / 24, 10.25 / 24]);
});
