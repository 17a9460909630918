/** The name under which the workbook keeps the calls typed into the pane. */
export const callsKey = "day-calls";
