export function splitExample(
  example: string,
): { readonly formula: string; readonly gives: string | null; readonly fails: string | null } | null;
