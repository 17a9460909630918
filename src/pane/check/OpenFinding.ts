import type { Finding } from "../../checks/finding";

/** A finding with the name the list knows it by: it stays the same while other cells change. */
export interface OpenFinding {
  readonly id: string;
  /** Rule, place and content; what an ignored finding is recognised by. */
  readonly key: string;
  readonly finding: Finding;
}
