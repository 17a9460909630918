import type { ResultCell, ResultTable } from "../resultTable";
import type { RunPlan } from "./runPlan";

/** A run as it spills; null, no row at all, is the heading row alone. */
export function runTable(plan: RunPlan | null): ResultTable {
  const rows: ResultCell[][] = [];
  if (plan !== null) {
    for (const { stop, arriveAt, waitMinutes, leaveAt } of plan.visits)
      rows.push([stop.name, arriveAt, waitMinutes, leaveAt]);
    for (const { stop, problem } of plan.unmet) rows.push([stop.name, problem, null, null]);
    if (plan.backAt !== null) rows.push([plan.visits[0]!.stop.name, plan.backAt, 0, plan.backAt]);
  }
  return { headings: ["Stop", "Arrive", "Wait", "Leave"], formats: ["as is", "time", "as is", "time"], rows };
}
