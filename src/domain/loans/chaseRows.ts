import { groupsInOrder } from "../groupsInOrder";
import { isProblem } from "../isProblem";
import { unreadFields } from "../unreadFields";
import type { ChaseDays } from "./chaseDays";
import { chaseReason } from "./chaseReason";
import type { ChaseRow } from "./chaseRow";
import type { RequestRows } from "./requestRows";

const DECIDE = ["answer", "collected", "answered", "asked", "neededBy"] as const;

/**
 * The requests to chase, the soonest need first (a need already past before all), then those with no day of need, each in
 * sheet order.
 *
 * A row of which it cannot be told, or not when it is needed, stands after the others with the cells that cannot be read.
 */
export function chaseRows(requests: RequestRows, days: ChaseDays): readonly ChaseRow[] {
  const toChase: (ChaseRow & { readonly need: number })[] = [];
  const untold: ChaseRow[] = [];
  for (let index = 0; index < requests.count; index++) {
    const request = requests.at(index);
    const reason = chaseReason(request, days);
    if (reason === null) continue;
    const need = request.neededBy;
    if (reason !== "untold" && !isProblem(need)) toChase.push({ row: request.row, need: need ?? Infinity });
    else untold.push({ row: request.row, unread: unreadFields(request, DECIDE) });
  }
  const soonestFirst = groupsInOrder(toChase, ({ need }) => need);
  return [...soonestFirst, untold].flat();
}
