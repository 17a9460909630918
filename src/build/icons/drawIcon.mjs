import { encodePng } from "./encodePng.mjs";

/** The sizes that Excel's ribbon (16, 32, 80) and its lists of add-ins (32, 64) show. */
export const ICON_SIZES = [16, 32, 64, 80];

const CLOTH = [31, 78, 95];
const THREAD = [255, 255, 255];

// All lengths are shares of the icon's side. Slanting stitches, as a tailor tacks two layers together.
const CORNER = 0.2;
const STITCHES = [0.25, 0.5, 0.75];
const STITCH_HALF_LENGTH = 0.26;
const STITCH_SLANT = 0.09;
const THREAD_HALF_WIDTH = 0.055;

// Points asked for each side of a pixel, so that slanting edges are smooth.
const SAMPLES = 8;

/** The mark of the add-in, a square of cloth with tacking stitches across it, as a PNG of `size` pixels a side. */
export function drawIcon(size) {
  const pixels = Buffer.alloc(size * size * 4);
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) pixels.set(pixel(x, y, size), (y * size + x) * 4);
  }
  return encodePng(size, size, pixels);
}

function pixel(x, y, size) {
  let cloth = 0;
  let thread = 0;
  for (let sy = 0; sy < SAMPLES; sy++) {
    for (let sx = 0; sx < SAMPLES; sx++) {
      const [u, v] = [(x + (sx + 0.5) / SAMPLES) / size, (y + (sy + 0.5) / SAMPLES) / size];
      if (!isOnCloth(u, v)) continue;
      cloth++;
      if (STITCHES.some((middle) => isOnStitch(u, v, middle))) thread++;
    }
  }
  const share = cloth === 0 ? 0 : thread / cloth;
  const colour = CLOTH.map((channel, index) => Math.round(channel + (THREAD[index] - channel) * share));
  return [...colour, Math.round((cloth / SAMPLES ** 2) * 255)];
}

function isOnCloth(u, v) {
  const [du, dv] = [u, v].map((at) => Math.max(CORNER - at, at - (1 - CORNER), 0));
  return Math.hypot(du, dv) <= CORNER;
}

function isOnStitch(u, v, middle) {
  const [fromU, fromV] = [middle - STITCH_SLANT, 0.5 + STITCH_HALF_LENGTH];
  const [alongU, alongV] = [2 * STITCH_SLANT, -2 * STITCH_HALF_LENGTH];
  const share = ((u - fromU) * alongU + (v - fromV) * alongV) / (alongU ** 2 + alongV ** 2);
  const at = Math.min(1, Math.max(0, share));
  return Math.hypot(u - fromU - at * alongU, v - fromV - at * alongV) <= THREAD_HALF_WIDTH;
}
