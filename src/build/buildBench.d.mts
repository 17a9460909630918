export const benchFolder: string;
export function buildBench(options?: { readonly entry?: string; readonly folder?: string }): Promise<boolean>;
