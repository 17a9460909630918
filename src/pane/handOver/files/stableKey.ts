const PRIME = 0x100000001b3n;
const BASIS = 0xcbf29ce484222325n;

/** A short name for a text that stays the same wherever and whenever it is made: FNV-1a over UTF-8, 64 bits, as in its authors' description. */
export function stableKey(text: string): string {
  let hash = BASIS;
  for (const octet of new TextEncoder().encode(text)) hash = BigInt.asUintN(64, (hash ^ BigInt(octet)) * PRIME);
  return hash.toString(16).padStart(16, "0");
}
