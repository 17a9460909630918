import type { Look } from "./lookOfStyle";

/** What is compared of a look; its type makes one that is added to looks stand here too. */
const PLAIN: Readonly<Record<Exclude<keyof Look, "lines">, true>> = {
  pattern: true,
  bold: true,
  italic: true,
  ink: true,
  background: true,
  wrap: true,
  across: true,
};
const NAMES = Object.keys(PLAIN) as (keyof typeof PLAIN)[];
const SIDES: readonly (keyof Look["lines"])[] = ["left", "right", "top", "bottom"];

/** Whether two cells look the same, as far as the bench shows and saves it. */
export function sameLook(one: Look, other: Look): boolean {
  if (one === other) return true;
  return (
    NAMES.every((name) => one[name] === other[name]) && SIDES.every((side) => one.lines[side] === other.lines[side])
  );
}
