import type { AreaKind } from "./areaKinds";
import type { KindColumnChoice } from "./columnChoices";
import { headingVocabulary } from "./headingVocabulary";
import type { KeptChoices } from "./keptChoices";
import { tableKinds } from "./tableKinds";
import type { TableKind } from "./tableKind";

/**
 * The choices out of the text kept in the workbook; never fails.
 *
 * What is no choice is passed over and counted, not guessed at: somebody else's text, a field that is not known, a second
 * choice for one heading.
 */
export function parseKeptChoices(text: string | null): KeptChoices & { readonly unreadable: number } {
  const kept = text === null || text.trim() === "" ? {} : objectIn(text);
  if (kept === null) return { columns: {}, kinds: {}, unreadable: 1 };
  let unreadable = 0;
  const listsIn = <T>(held: unknown, read: (one: unknown) => T | null, clash: (one: T, other: T) => boolean) => {
    const sheets = held === undefined ? {} : asObject(held);
    if (sheets === null) unreadable += 1;
    const lists: [string, readonly T[]][] = [];
    for (const [sheet, list] of Object.entries(sheets ?? {})) {
      const good: T[] = [];
      for (const one of Array.isArray(list) ? list : [null]) {
        const choice = read(one);
        if (choice === null || good.some((other) => clash(choice, other))) unreadable += 1;
        else good.push(choice);
      }
      if (good.length > 0) lists.push([sheet, good]);
    }
    // fromEntries makes a sheet called __proto__ an entry like any other.
    return Object.fromEntries(lists);
  };
  const columns = listsIn(kept.columns, readChoice, contradict);
  const kinds = listsIn(kept.kinds, readAreaKind, () => false);
  return { columns, kinds, unreadable };
}

function contradict(one: KindColumnChoice, other: KindColumnChoice): boolean {
  if (one.kind !== other.kind) return false;
  if (one.heading !== null) return one.heading === other.heading;
  return one.field === other.field && other.heading === null && one.notHeading === other.notHeading;
}

function readChoice(held: unknown): KindColumnChoice | null {
  const { kind, field, heading, notHeading } = asObject(held) ?? {};
  if (!isKind(kind) || typeof field !== "string" || !headingVocabulary(kind).canonical.has(field)) return null;
  if (heading !== null && (typeof heading !== "string" || heading.trim() === "")) return null;
  if (notHeading === undefined) return { kind, field, heading };
  return heading === null && typeof notHeading === "string" ? { kind, field, heading, notHeading } : null;
}

function readAreaKind(held: unknown): AreaKind | null {
  const { kind, headings } = asObject(held) ?? {};
  if (kind !== null && !isKind(kind)) return null;
  if (!Array.isArray(headings) || headings.length === 0) return null;
  return headings.every((heading) => typeof heading === "string" && heading.trim() !== "") ? { kind, headings } : null;
}

function isKind(held: unknown): held is TableKind {
  return (tableKinds as readonly unknown[]).includes(held);
}

function objectIn(text: string): Readonly<Record<string, unknown>> | null {
  try {
    return asObject(JSON.parse(text));
  } catch {
    return null;
  }
}

function asObject(held: unknown): Readonly<Record<string, unknown>> | null {
  return typeof held === "object" && held !== null && !Array.isArray(held) ? (held as Record<string, unknown>) : null;
}
