/** One finding that was ignored, as it is kept in the workbook. */
export interface IgnoredEntry {
  /** See findingKey. */
  readonly key: string;
  /** For reading: the cell at the time, its heading, what it held and what was said of it. */
  readonly place: string;
  readonly heading: string;
  readonly held: string;
  readonly message: string;
  /** Why it is right as it is, in the user's words. Never blank. */
  readonly reason: string;
  /** The day it was ignored, yyyy-mm-dd. */
  readonly ignoredOn: string;
}
