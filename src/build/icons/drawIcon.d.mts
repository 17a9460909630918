import type { Buffer } from "node:buffer";

export declare const ICON_SIZES: readonly number[];
export declare function drawIcon(size: number): Buffer;
