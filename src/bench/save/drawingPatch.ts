import { settledEdits } from "./settledEdits";
import { shiftedIndex } from "./shiftedIndex";
import type { StructureEdit } from "./structureEdit";

/**
 * A drawing's part after rows or columns of its sheet were put in or taken out: each picture goes on lying over the cells
 * it lay over, and one whose rows are gone lies where they were (ISO/IEC 29500-1 20.5.2.5 and 20.5.2.32: a corner is a
 * row and a column from 0, and how far into them).
 */
export function drawingPatch(xml: string, edits: readonly StructureEdit[]): string {
  return settledEdits(edits).reduce(
    (held, edit) =>
      held.replace(/<((?:\w+:)?(?:from|to))>([\s\S]*?)<\/\1>/g, (_, name: string, corner: string) => {
        return `<${name}>${shiftedCorner(corner, edit)}</${name}>`;
      }),
    xml,
  );
}

function shiftedCorner(corner: string, edit: StructureEdit): string {
  const axis = edit.axis === "row" ? "row" : "col";
  const index = new RegExp(`<(?:\\w+:)?${axis}>\\s*(\\d+)`).exec(corner)?.[1];
  if (index === undefined) return corner;
  const shifted = shiftedIndex(Number(index), edit);
  const set = (held: string, name: string, value: number) =>
    held.replace(new RegExp(`(<((?:\\w+:)?${name})>)[^<]*`), (_, tag: string) => `${tag}${value}`);
  return shifted === null ? set(set(corner, axis, edit.from), `${axis}Off`, 0) : set(corner, axis, shifted);
}
