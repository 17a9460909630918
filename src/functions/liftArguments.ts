import type { Lift } from "../domain/carry/lifting/lift";
import { needed } from "../domain/needed";
import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { readChoice } from "../sheet/readChoice";
import { numberArguments } from "./numberArguments";

const LENGTH = ', in cm or, with "lb", in inches';
const UNITS = {
  horizontal: LENGTH,
  vertical: LENGTH,
  travel: LENGTH,
  angle: ", in degrees",
  liftsPerMinute: ", such as 0.2 for one in five minutes",
  hours: ", such as 1",
};
const GRIPS = ["good", "fair", "poor"] as const;
type Measure = Exclude<keyof Lift, "grip" | "unit">;

/** The arguments that LIFTLIMIT and LIFTINDEX share, as one lift. */
export function liftArguments(
  measures: Readonly<Record<Measure, unknown>>,
  grip: unknown,
  unit: unknown,
): Outcome<Lift> {
  const numbers = numberArguments(measures, ["horizontal", "hours"], UNITS);
  if (!numbers.ok) return numbers;
  const gripRead = needed(readChoice(grip, "grip", GRIPS), "grip", '"good", "fair" or "poor"');
  if (!gripRead.ok) return gripRead;
  const unitRead = readChoice(unit, "unit", ["kg", "lb"]);
  if (!unitRead.ok) return unitRead;
  return succeed({ ...numbers.value, grip: gripRead.value, unit: unitRead.value ?? "kg" });
}
