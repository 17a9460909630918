import { headingVocabulary } from "../../sheet/headingVocabulary";
import type { TableKind } from "../../sheet/tableKind";

/** A field as its plainest heading says it: quantityBack is "Quantity back". */
export function fieldName(kind: TableKind, field: string): string {
  return headingVocabulary(kind).canonical.get(field) ?? field;
}
