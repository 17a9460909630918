import type { ClosedDaysFound } from "../../sheet/closedDaysFound";
import type { LoanLine } from "./LoanLine";

/** A piece that goes back by courier, and the last day to send it. */
export interface SendLine extends LoanLine {
  readonly sendBy: number;
  readonly courierDays: number;
}

/** What is to be sent, soonest first; pieces of lenders without courier days are not sent and stand in no list here. */
export interface SendList {
  readonly lines: readonly SendLine[];
  readonly closed: ClosedDaysFound;
  /** Whether any lender has courier days at all. */
  readonly isAnyCourierKnown: boolean;
}
