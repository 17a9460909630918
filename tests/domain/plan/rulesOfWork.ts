import type { DayWork } from "../../../src/domain/plan/dayWork";
import type { OrderRules } from "../../../src/domain/plan/orderRules";

/** The rules of a day in which nothing is fixed, but for what has been shot, which stands first. */
export function rulesOfWork({ looks }: DayWork): OrderRules {
  return {
    count: looks.length,
    before: looks.map((look) => (look.shotAtSeconds === null ? look.after : [])),
    placeOf: looks.map((look, index) => (look.shotAtSeconds === null ? -1 : index)),
  };
}
