import type { AreaKind } from "../../sheet/areaKinds";
import { chosenKind } from "../../sheet/chosenKind";
import type { TableKind } from "../../sheet/tableKind";

/**
 * A sheet's choices of kind after one area was given one, was set aside (null), or is to be guessed again (undefined).
 * Choices that would count for the same headings make way.
 */
export function withAreaKind(
  choices: readonly AreaKind[],
  headings: readonly string[],
  kind: TableKind | null | undefined,
): readonly AreaKind[] {
  const named = headings.filter((heading) => heading.trim() !== "");
  const others = choices.filter((choice) => chosenKind(headings, [choice]) === undefined);
  return kind === undefined || named.length === 0 ? others : [...others, { headings: named, kind }];
}
