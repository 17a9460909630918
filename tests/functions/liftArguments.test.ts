import { sayProblem } from "../../src/domain/wording";
import { liftArguments } from "../../src/functions/liftArguments";

const measures = { horizontal: 40, vertical: 0, travel: 70, angle: 0, liftsPerMinute: 0, hours: 1 };

function said(...args: Parameters<typeof liftArguments>): unknown {
  const lift = liftArguments(...args);
  return lift.ok ? lift.value : sayProblem(lift.problem);
}

test("kilograms and centimetres when no unit is given", () => {
  for (const unit of [null, undefined, "", 0, "KG"])
    expect(said(measures, "Poor", unit)).toEqual({ ...measures, grip: "poor", unit: "kg" });
  expect(said(measures, "good", "lb")).toMatchObject({ unit: "lb" });
});

test("a reach and hours of 0 are cells left blank, and are refused", () => {
  expect(said({ ...measures, horizontal: 0 }, "good", null)).toContain("horizontal: ");
  expect(said({ ...measures, hours: 0 }, "good", null)).toContain("hours: ");
});

test("a grip must be given, and be one of three", () => {
  expect(said(measures, null, null)).toBe('grip is blank; give "good", "fair" or "poor".');
  expect(said(measures, "firm", null)).toContain('grip: "firm" cannot be used');
  expect(said(measures, "good", "stone")).toContain('unit: "stone" cannot be used');
});
