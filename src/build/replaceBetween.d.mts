export function replaceBetween(text: string, name: string, content: string): string;
