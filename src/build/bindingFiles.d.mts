export function bindingFiles(folder?: string): string[];
