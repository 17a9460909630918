/** The name under which the workbook keeps the ignored findings. */
export const ignoredKey = "ignored-findings";
