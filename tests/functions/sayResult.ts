/**
 * A result as an example writes it, so that both can be compared as text: a date as yyyy-mm-dd, a time as
 * hh:mm, by the format the value carries; anything else as it is.
 */
export function sayResult(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sayResult);
  if (typeof value !== "object" || value === null) return value;
  const { basicValue, numberFormat } = value as { basicValue?: unknown; numberFormat?: unknown };
  if (typeof basicValue !== "number") return value;
  if (numberFormat === "yyyy-mm-dd")
    return new Date(Date.UTC(1899, 11, 30) + basicValue * 86_400_000).toISOString().slice(0, 10);
  if (numberFormat !== "hh:mm" && numberFormat !== "[h]:mm") return basicValue;
  const minutes = basicValue * 1440;
  // A minute is no binary fraction of a day; a thousandth of a second off is the same time of day.
  if (Math.abs(minutes - Math.round(minutes)) > 1e-5) return basicValue;
  const padded = (part: number): string => String(part).padStart(2, "0");
  return `${padded(Math.floor(Math.round(minutes) / 60))}:${padded(Math.round(minutes) % 60)}`;
}
