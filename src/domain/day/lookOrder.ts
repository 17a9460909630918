import type { Outcome } from "../outcome";
import { atOnce } from "../plan/atOnce";
import type { Day } from "./day";
import type { LookOrderEffort } from "./lookOrderEffort";
import { lookOrderStepwise } from "./lookOrderStepwise";
import type { OrderedDay } from "./orderedDay";

/** The plan of one day in the best order found, sought without a stop; see `lookOrderStepwise`. */
export function lookOrder(day: Day, effort?: LookOrderEffort): Outcome<OrderedDay> {
  return atOnce(lookOrderStepwise(day, effort));
}
