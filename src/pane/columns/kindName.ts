import type { TableKind } from "../../sheet/tableKind";

const NAMES: Readonly<Record<TableKind, string>> = {
  pieces: "Pieces",
  requests: "Requests",
  lenders: "Lenders",
  looks: "Looks",
  day: "Shoot days",
  stops: "Stops",
  receipts: "Receipts",
  shoes: "Shoes",
};

/** A kind of table as a heading says it. */
export function kindName(kind: TableKind): string {
  return NAMES[kind];
}
