import { clockSeconds } from "../../domain/day/clockSeconds";
import type { Day } from "../../domain/day/day";
import { dayPlan } from "../../domain/day/dayPlan";
import { looksInOrder } from "../../domain/day/looksInOrder";
import { minutesSpareAtWrap } from "../../domain/day/minutesSpareAtWrap";
import { sayProblem } from "../../domain/wording";
import type { TriedDay } from "./TriedDay";

/**
 * A day with its looks in the order of `keys`, planned as DAYPLAN plans it. What has been shot stays first, as it
 * happened. `wrap` is a fraction of a day, or null where it is not known.
 */
export function dayInOrder(given: Day, keys: readonly string[], wrap: number | null): TriedDay {
  const placeOf = new Map(keys.map((key, place) => [key, place + 1]));
  const looks = given.looks.map((look) => ({ ...look, order: placeOf.get(look.key) ?? null }));
  const plan = dayPlan({ ...given, looks });
  const before = dayPlan(given);
  if (!plan.ok) {
    return {
      looks: looksInOrder(looks, clockSeconds(given.call)),
      shots: null,
      ends: null,
      minutesSpareAtWrap: null,
      minutesSooner: null,
      sentence: sayProblem(plan.problem),
    };
  }
  const spare = wrap === null ? null : minutesSpareAtWrap(plan.value, wrap);
  return {
    looks: plan.value.looks.map(({ look }) => look),
    shots: plan.value.looks.map(({ shootFrom, shootUntil }) => ({ from: shootFrom, until: shootUntil })),
    ends: plan.value.ends,
    minutesSpareAtWrap: spare?.ok === true ? spare.value : null,
    minutesSooner: before.ok ? (clockSeconds(before.value.ends) - clockSeconds(plan.value.ends)) / 60 : null,
    sentence: null,
  };
}
