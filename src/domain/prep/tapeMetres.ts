import { sole } from "../../../shared/shoe-sizes.json";

/**
 * The tape for one layer under both soles of some pairs, in metres, up to the next centimetre.
 *
 * Strips run from heel to toe, as many as cover the broadest place with their overlap, each as long as the sole; what is cut off at
 * the edges is not saved. Sole from foot: shared/shoe-sizes.json, no source.
 */
export function tapeMetres(footMm: number, pairs: number, tapeWidthMm: number, overlapMm: number): number {
  const strips = Math.max(1, Math.ceil((footMm * sole.breadthShare - overlapMm) / (tapeWidthMm - overlapMm) - 1e-9));
  const millimetres = 2 * pairs * strips * (footMm + sole.longerMm);
  return Math.ceil(millimetres / 10 - 1e-9) / 100;
}
