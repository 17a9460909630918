import type { CoverLimits } from "./CoverLimits";

/** The text the limits are kept as; parseCover reads it back. */
export function coverText(limits: CoverLimits): string {
  return JSON.stringify({ version: 1, limits: Object.fromEntries(limits) });
}
