/** The name under which the workbook keeps what was typed about the job. */
export const jobKey = "hand-over-job";
