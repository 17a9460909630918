export function limitCache(folder: string, mostBytes?: number): void;
