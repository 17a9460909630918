/** The day a span is counted from, as day 0: the day out, the last shoot day, or the day of a shop's receipt (which is the day out). */
export type TermsAnchor = "out" | "shoot" | "receipt";

/** When a lender wants a piece back. Weeks and hours are days by now: 2 weeks are 14 days, 48 hours 2. */
export type Terms =
  | { readonly kind: "days" | "working days" | "months"; readonly count: number; readonly from: TermsAnchor }
  /** The first such weekday (0 Monday to 6 Sunday) after the anchor, never the anchor itself. */
  | { readonly kind: "weekday"; readonly weekday: number; readonly from: TermsAnchor }
  /** The last day of the month a piece goes out in (0) or of the month after (1). */
  | { readonly kind: "month end"; readonly monthsOn: 0 | 1 }
  /** A fixed day, as a serial. */
  | { readonly kind: "date"; readonly day: number };
