import { columnParts } from "../sheet/columnParts";
import { readColumnChoices } from "../sheet/readColumnChoices";
import { readText } from "../sheet/readText";
import { sameHeading } from "../sheet/sameHeading";
import type { TableKind } from "../sheet/tableKind";

/** How many rows are looked through for a heading, as in findHeadingRow. */
const HEADING_ROWS = 20;

interface TableArgument {
  readonly kind: TableKind;
  readonly cells: readonly (readonly unknown[])[] | null;
}

/**
 * The parts of a columns argument that are meant for one of two tables: by the field they name, and where both have it
 * by the heading. What fits neither stays with the first, which then says so.
 */
export function columnsOfTable(
  columns: unknown,
  tables: readonly [TableArgument, TableArgument],
  place: 0 | 1,
): unknown {
  const text = readText(columns, "columns");
  if (!text.ok || text.value === null || columns === 0) return columns;
  const mine = tables[place];
  const others = tables[1 - place]!;
  const meant = columnParts(text.value, [mine.kind, others.kind]).filter((part) => {
    const mineFits = closeness(part, mine.kind);
    const closer = mineFits - closeness(part, others.kind);
    if (closer !== 0) return closer > 0;
    const heading = part.slice(part.indexOf("=") + 1).trim();
    if (mineFits > 0 && (heading === "" || hasHeading(mine, heading))) return true;
    return place === 0 && (mineFits === 0 || !hasHeading(others, heading));
  });
  return meant.join(";");
}

/** 2 where the part names a field of that kind of table by its name, 1 where by one of its headings, 0 where it names none. */
function closeness(part: string, kind: TableKind): number {
  const read = readColumnChoices(part, kind);
  if (!read.ok || read.value.length === 0) return 0;
  const name = part.slice(0, part.indexOf("=")).trim().toLowerCase();
  return read.value[0]!.field.toLowerCase() === name ? 2 : 1;
}

function hasHeading({ cells }: TableArgument, heading: string): boolean {
  return (cells ?? []).slice(0, HEADING_ROWS).some((row) =>
    row.some((cell) => {
      const text = readText(cell, "");
      return text.ok && text.value !== null && sameHeading(text.value, heading);
    }),
  );
}
