import type { Server } from "node:http";
export function serveBench(options: {
  readonly folder: string;
  readonly port: number;
}): Promise<{ server: Server; port: number }>;
