/** A text as one cell of a Markdown table. */
export function markdownCell(text) {
  return text.replace(/\s+/g, " ").replaceAll("|", "\\|").trim();
}
