import { splitOutside } from "./splitOutside";

/** One literal, as a cell or an argument of the host would hold it; blank is undefined. */
export function readLiteral(text: string): unknown {
  const literal = text.trim();
  if (literal === "") return undefined;
  if (literal === "TRUE" || literal === "FALSE") return literal === "TRUE";
  if (/^"(?:[^"]|"")*"$/.test(literal)) return literal.slice(1, -1).replaceAll('""', '"');
  if (/^[-+]?\d*\.?\d+(?:E[-+]?\d+)?$/i.test(literal)) return Number(literal);
  if (literal.startsWith("{") && literal.endsWith("}")) {
    return splitOutside(literal.slice(1, -1), ";").map((row) => splitOutside(row, ",").map(readLiteral));
  }
  const call = /^(DATE|TIME)\((\d+),(\d+),(\d+)\)$/.exec(literal.replace(/\s/g, ""));
  if (call === null) throw new Error(`Not a literal: ${literal}`);
  const [first, second, third] = call.slice(2).map(Number) as [number, number, number];
  return call[1] === "DATE" ? serialOf(first, second, third) : (first * 3600 + second * 60 + third) / 86_400;
}

/** The serial day of the 1900 system, by the runtime's own calendar and not by the code under test; right from March 1900 on. */
function serialOf(year: number, month: number, day: number): number {
  return (Date.UTC(year, month - 1, day) - Date.UTC(1899, 11, 30)) / 86_400_000;
}
