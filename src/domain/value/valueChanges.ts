import type { FieldValue } from "../fieldValue";
import type { ValueChange } from "./valueChange";
import type { ValueDoubt } from "./valueDoubt";

/** All that is held in one currency over time, as changes from day to day. */
export interface ValueChanges {
  /** null where the rows name none; a problem where their currency cannot be read. */
  readonly currency: FieldValue<string>;
  readonly byDay: Map<number, ValueChange>;
  /** In the order of the rows. */
  readonly doubts: ValueDoubt[];
  /** The first row that is ever held and has a value; null where none has. */
  firstValuedRow: number | null;
}
