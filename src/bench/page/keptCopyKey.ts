/** There is one copy at a time: that of the workbook last changed. */
export const keptCopyKey = "unsaved";
