const PROTECTED = "This sheet is protected in the file. Take the protection off in Excel, then open it here again.";

/** What the grid says in words of our own: here nobody shares a sheet, a protected one came so from its file. */
export const ownWords = {
  sheets: { permission: { dialog: { editErr: PROTECTED, formulaErr: PROTECTED } } },
  "sheets-ui": { permission: { dialog: { alert: "Protected", editErr: PROTECTED, pasteErr: PROTECTED } } },
};
