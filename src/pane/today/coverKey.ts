/** The name under which the workbook keeps the limits of the cover. */
export const coverKey = "cover-limits";
