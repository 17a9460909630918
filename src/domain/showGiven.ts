const LONGEST_SHOWN = 40;

/** A value as a sentence quotes it: on one line, and cut where it is long. */
export function showGiven(value: string | number | boolean): string {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "number" && !Number.isFinite(value)) return "no finite number";
  const text = String(value).replace(/\s+/g, " ").trim();
  return text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN - 1)}…` : text;
}
