import type { FunctionDoc } from "./functionDocs.mjs";

export function functionsTable(docs: readonly FunctionDoc[]): string;

export function checksTable(
  rules: readonly {
    readonly id: string;
    readonly about: string;
    readonly why: string;
    readonly severity: string;
    readonly fixable: boolean;
  }[],
): string;

export function replaceBetween(text: string, name: string, content: string): string;
