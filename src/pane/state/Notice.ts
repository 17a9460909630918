/** One sentence for the message bars at the head of the pane. */
export interface Notice {
  /** Counts up, so that two equal sentences are still two notices. */
  readonly id: number;
  /** problem: something could not be done. done: something was. */
  readonly kind: "problem" | "done";
  readonly sentence: string;
}
