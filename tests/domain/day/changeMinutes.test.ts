import fc from "fast-check";
import { changeMinutes } from "../../../src/domain/day/changeMinutes";

const MINUTES: Readonly<Record<string, number>> = { dress: 2.5, shirt: 2.5, skirt: 2, ring: 0.1, shoes: 1.5 };
const minutesOf = (kind: string): number => MINUTES[kind]!;
const outfit = fc.array(fc.constantFrom(...Object.keys(MINUTES)), { maxLength: 8 });

test.each([
  ["what both wear stays on", ["shirt", "skirt"], ["skirt", "shirt"], 0],
  ["what differs comes off and goes on", ["shirt", "shoes"], ["dress", "shoes"], 5],
  ["a kind worn twice and then once comes off once", ["shirt", "shirt"], ["shirt"], 2.5],
  ["from nothing everything goes on", [], ["dress", "shoes"], 4],
  ["to nothing everything comes off", ["dress", "shoes"], [], 4],
  ["tenths add up", ["ring", "ring", "ring"], [], 0.3],
])("%s", (_, wearing, next, minutes) => {
  expect(changeMinutes(wearing, next, minutesOf)).toBe(minutes);
});

/** Strikes out one piece after another that both wear, then adds what is left over on both sides. */
function byStrikingOut(wearing: readonly string[], next: readonly string[]): number {
  const left = [...next];
  const off = wearing.filter((kind) => {
    const at = left.indexOf(kind);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
  return [...off, ...left].reduce((sum, kind) => sum + minutesOf(kind), 0);
}

test("it is what striking out piece by piece gives", () => {
  fc.assert(
    fc.property(outfit, outfit, (wearing, next) => {
      expect(changeMinutes(wearing, next, minutesOf)).toBeCloseTo(byStrikingOut(wearing, next), 9);
    }),
  );
});

test("there and back take the same, and a way round is never shorter", () => {
  fc.assert(
    fc.property(outfit, outfit, outfit, (a, b, c) => {
      const between = (from: string[], to: string[]): number => changeMinutes(from, to, minutesOf);
      expect(between(a, b)).toBe(between(b, a));
      expect(between(a, c)).toBeLessThanOrEqual(between(a, b) + between(b, c) + 1e-9);
    }),
  );
});
