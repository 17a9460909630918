/** Which days are worked: the closed weekdays and the closed dates, made ready for counting. */
export interface WorkingCalendar {
  /** Bit 0 Monday to bit 6 Sunday; a set bit is a closed weekday. */
  readonly closedWeekdays: number;
  /** 0 to 7. */
  readonly openDaysAWeek: number;
  /** The closed dates that fall on open weekdays, ascending, each once. */
  readonly closedDays: readonly number[];
}
