/** Text without halves of characters, which no file in UTF-8 can hold, and without control signs other than tab and line ends. */
export function wellFormed(text: string): string {
  // Nearly every cell is as it should be, and looking is quicker than making a new text of it.
  if (!/[\p{Surrogate}\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F]/u.test(text)) return text;
  return text.replace(/\p{Surrogate}/gu, "\uFFFD").replace(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F]/g, "");
}
