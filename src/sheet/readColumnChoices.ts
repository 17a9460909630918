import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import type { ColumnChoice } from "./columnChoice";
import { columnParts } from "./columnParts";
import { fieldNamed } from "./fieldNamed";
import { headingVocabulary } from "./headingVocabulary";
import { readText } from "./readText";
import type { TableKind } from "./tableKind";

/**
 * The columns argument of a whole-table function: "value=Ins. amt; lender=From" in parts as columnParts gives them.
 *
 * Before the = stands a field or any heading understood for it, behind it the heading as typed; nothing behind it ("due=") says
 * that no column is that field. Blank (also 0) is no choices. Problems: columns-not-understood, columns-contradict, error-in-cell.
 */
export function readColumnChoices(
  raw: unknown,
  kind: TableKind,
  argument = "columns",
): Outcome<readonly ColumnChoice[]> {
  const text = raw === 0 ? succeed(null) : readText(raw, argument);
  if (!text.ok) return text;
  const choices: ColumnChoice[] = [];
  for (const part of columnParts(text.value ?? "", [kind])) {
    if (part.trim() === "") continue;
    const sign = part.indexOf("=");
    const field = sign < 0 ? null : fieldNamed(kind, part.slice(0, sign).trim());
    if (field === null) {
      const names = [...headingVocabulary(kind).canonical.keys()];
      const fields = names.length > 12 ? `${names.slice(0, 12).join(", ")} and so on` : names.join(", ");
      return fail("columns-not-understood", { argument, part: showGiven(part), fields });
    }
    const heading = part.slice(sign + 1).trim() || null;
    const isRepeated = choices.some(
      (other) => other.field === field || (heading !== null && other.heading === heading),
    );
    if (isRepeated) return fail("columns-contradict", { argument, part: showGiven(part) });
    choices.push({ field, heading });
  }
  return succeed(choices);
}
