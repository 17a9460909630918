import type { IgnoredEntry } from "./IgnoredEntry";

const TEXTS = ["key", "place", "heading", "held", "message", "reason", "ignoredOn"] as const;

/** The ignored findings out of the text kept in the workbook. Entries that cannot be read are counted, not guessed at. */
export function parseIgnored(text: string | null): {
  readonly entries: readonly IgnoredEntry[];
  readonly unreadable: number;
} {
  if (text === null || text.trim() === "") return { entries: [], unreadable: 0 };
  const list = listIn(text);
  if (list === null) return { entries: [], unreadable: 1 };
  const entries = list.filter(isEntry);
  return { entries, unreadable: list.length - entries.length };
}

function listIn(text: string): readonly unknown[] | null {
  try {
    const kept = JSON.parse(text) as { ignored?: unknown } | null;
    return Array.isArray(kept?.ignored) ? kept.ignored : null;
  } catch {
    return null;
  }
}

function isEntry(held: unknown): held is IgnoredEntry {
  if (typeof held !== "object" || held === null) return false;
  return TEXTS.every((name) => typeof (held as Record<string, unknown>)[name] === "string");
}
