/** An entry for a whole day of a calendar. */
export interface CalendarEvent {
  /** The same for the same thing in every file, so that a calendar takes a later one for news of it. */
  readonly uid: string;
  /** Serial day. */
  readonly day: number;
  readonly summary: string;
  readonly description: string;
  /** "" where there is none to tell. */
  readonly location: string;
}
