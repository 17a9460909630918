import { fail } from "../fail";
import type { Outcome } from "../outcome";
import { orderWithin } from "../plan/orderWithin";
import type { OrderRules } from "../plan/orderRules";
import type { Look } from "./look";
import { sayLook } from "./sayLook";

/** Names the look whose Fixed leaves no order: of those with a place, in the order of their places, the first with which there is none. */
export function lookOrderProblem(looks: readonly Look[], rules: OrderRules): Outcome<never> {
  const fixed = looks
    .map((look, index) => ({ look, place: rules.placeOf[index]! }))
    .filter(({ place }) => place >= 0)
    .sort((a, b) => a.place - b.place);
  const { look } = fixed.find(({ place }) => {
    const placeOf = rules.placeOf.map((other) => (other <= place ? other : -1));
    return orderWithin({ ...rules, placeOf }) === null;
  })!;
  const expected = "a place that its After and the other fixed looks allow";
  return fail("argument-not-usable", {
    argument: `Fixed of ${sayLook(look.label)}`,
    given: String(look.fixed),
    expected,
  });
}
