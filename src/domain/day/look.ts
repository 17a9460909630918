import type { FieldValue } from "../fieldValue";
import type { ChangeRange } from "./changeRange";

/** One look of a day, as its row says it. Times are fractions of a day, durations minutes. */
export interface Look {
  /** What it is called by in After and in the table of changes: two spellings of one look number have the same key. */
  readonly key: string;
  /** The look number as typed. */
  readonly label: string | number;
  /** Everybody who wears it, each in one spelling throughout the day; empty where nobody is named. */
  readonly talents: readonly string[];
  /** The talents as typed. */
  readonly talentText: string;
  readonly order: number | null;
  /** Serial day. */
  readonly date: number | null;
  /** null where the set is not said. */
  readonly set: string | null;
  /** null where it is not said. */
  readonly where: "indoors" | "outdoors" | null;
  /** The numbers of the pieces worn, as far as the look's own row lists them, each in one spelling throughout the day. */
  readonly pieces: readonly string[];
  readonly changeMinutes: number;
  /** What the change may take; null where it is fixed. Only the chance of the day asks for it, so a problem waits here until then. */
  readonly changeRange: FieldValue<ChangeRange>;
  readonly hairMakeupMinutes: number;
  readonly shootingMinutes: number;
  /** Whether hair and make-up is done before the change. */
  readonly makeupFirst: boolean;
  /** When its talents are there, where they come after call. */
  readonly arrivesAt: number | null;
  /** When its shot began, where that has happened. */
  readonly shotAt: number | null;
  /** Keys of the looks that must come before it. */
  readonly after: readonly string[];
  /** The place it must have in the order; 1 is the first. */
  readonly fixed: "first" | "last" | number | null;
}
