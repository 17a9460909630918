import type { FunctionDoc } from "./functionDocs.mjs";

export function functionsTable(docs: readonly FunctionDoc[]): string;
