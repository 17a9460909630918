import type { ParamDoc } from "./FunctionDoc";

/** The argument that a sentence begins with ("asOf: …", "rows has no column …", "asOf is blank …"), or null. */
export function argumentAccused(sentence: string, params: readonly ParamDoc[]): string | null {
  return params.find(({ name }) => new RegExp(`^${name}(?:[:,]| (?:is|has|holds)\\b)`).test(sentence))?.name ?? null;
}
