import { mapReferences } from "./mapReferences";
import { shiftedReference } from "./shiftedReference";
import type { StructureEdit } from "./structureEdit";

/** A formula of the sheet `ownSheet` after rows or columns of the sheet `editedSheet` were put in or taken out. */
export function shiftedFormula(formula: string, edit: StructureEdit, ownSheet: string, editedSheet: string): string {
  return mapReferences(formula, (sheet, reference) => {
    if ((sheet ?? ownSheet).toLowerCase() !== editedSheet.toLowerCase()) return reference;
    return shiftedReference(reference, edit) ?? "#REF!";
  });
}
