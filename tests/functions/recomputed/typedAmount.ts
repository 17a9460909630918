import type { Drawn } from "./drawn";

/** An amount as people keep it in a cell: mostly a number, else text with the separators and signs of several countries. */
export function typedAmount(draw: Drawn, cents: number): unknown {
  if (draw.often(65)) return cents / 100;
  const whole = String(Math.floor(cents / 100));
  const rest = String(cents % 100).padStart(2, "0");
  const grouped = (separator: string): string => whole.replace(/\B(?=(\d{3})+$)/g, separator);
  return draw.one([
    `£${grouped(",")}.${rest}`,
    `${grouped(",")}.${rest}`,
    `${grouped(".")},${rest}`,
    `${grouped("'")}.${rest}`,
    `${grouped(" ")},${rest}`,
  ]);
}
