import { fieldNamed } from "./fieldNamed";
import type { TableKind } from "./tableKind";

/**
 * The parts of a columns argument, "value=Ins. amt; lender=From": they end at ; or a new line, or at a comma where a field of one of the
 * kinds and = come behind it, since a heading may hold a comma.
 */
export function columnParts(text: string, kinds: readonly TableKind[]): readonly string[] {
  return text.split(/[;\n]/).flatMap((part) => {
    const parts: string[] = [];
    for (const piece of part.split(",")) {
      const word = piece.slice(0, Math.max(0, piece.indexOf("="))).trim();
      const isNext = parts.length === 0 || (word !== "" && kinds.some((kind) => fieldNamed(kind, word) !== null));
      if (isNext) parts.push(piece);
      else parts[parts.length - 1] += `,${piece}`;
    }
    return parts;
  });
}
