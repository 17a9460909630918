import type { CoverLimits } from "./CoverLimits";

/** The limits of the cover out of the text kept in the workbook; what cannot be read is no limit. */
export function parseCover(text: string | null): CoverLimits {
  const limits = new Map<string, number>();
  for (const [currency, limit] of Object.entries(limitsIn(text))) {
    if (typeof limit === "number" && Number.isFinite(limit) && limit > 0) limits.set(currency, limit);
  }
  return limits;
}

function limitsIn(text: string | null): object {
  if (text === null) return {};
  try {
    const kept = JSON.parse(text) as { limits?: unknown } | null;
    return typeof kept?.limits === "object" && kept.limits !== null ? kept.limits : {};
  } catch {
    return {};
  }
}
