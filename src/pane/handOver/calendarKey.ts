/** The name under which the workbook keeps which calendar entries are its own, and how often they were saved. */
export const calendarKey = "hand-over-calendar";
