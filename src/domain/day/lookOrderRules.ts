import type { OrderRules } from "../plan/orderRules";
import type { DayWork } from "../plan/dayWork";
import type { Look } from "./look";

/**
 * What an order of the looks must keep, by their index in the order given, where those shot already stand first.
 *
 * What has been shot keeps its place, whatever its own Fixed and After say; a place that is taken by such a look no
 * longer binds another.
 */
export function lookOrderRules(looks: readonly Look[], work: DayWork): OrderRules {
  const shotCount = looks.filter((look) => look.shotAt !== null).length;
  return {
    count: looks.length,
    before: work.looks.map((look) => (look.shotAtSeconds === null ? look.after : [])),
    placeOf: looks.map((look, index) => {
      if (look.shotAt !== null) return index;
      const place = look.fixed === "last" ? looks.length - 1 : look.fixed === "first" ? 0 : (look.fixed ?? 0) - 1;
      return place < shotCount ? -1 : place;
    }),
  };
}
