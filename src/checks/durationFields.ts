import type { TableKind } from "../sheet/tableKind";

/** The columns that hold minutes and nothing else. */
export const durationFields: Readonly<Partial<Record<TableKind, readonly string[]>>> = {
  looks: ["change", "hairMakeup", "shooting", "low", "likely", "high"],
  stops: ["minutes"],
};
