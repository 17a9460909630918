import fc from "fast-check";
import { tapeMetres } from "../../../src/domain/prep/tapeMetres";

test("a foot of 240 mm: three strips of 50 mm with 5 mm overlap under each sole of 255 mm", () => {
  expect(tapeMetres(240, 1, 50, 5)).toBe(1.53);
  expect(tapeMetres(240, 2, 50, 5)).toBe(3.06);
});

test("a tape as broad as the sole takes one strip, and one a millimetre narrower two", () => {
  expect(tapeMetres(250, 1, 100, 0)).toBe(0.53);
  expect(tapeMetres(250, 1, 99, 0)).toBe(1.06);
});

test("the strips, laid one by one, cover the sole, and one fewer would not; never less tape than their length", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 210, max: 320 }),
      fc.integer({ min: 1, max: 5 }),
      fc.integer({ min: 10, max: 150 }),
      fc.nat(9),
      (footMm, pairs, widthMm, overlapMm) => {
        let strips = 1;
        // Tenths of a millimetre, so that four tenths of the foot is exact.
        for (let covered = widthMm * 10; covered < footMm * 4; covered += (widthMm - overlapMm) * 10) strips++;
        const centimetres = Math.ceil((2 * pairs * strips * (footMm + 15)) / 10);
        expect(tapeMetres(footMm, pairs, widthMm, overlapMm)).toBe(centimetres / 100);
      },
    ),
  );
});
