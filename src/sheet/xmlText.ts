const NAMED: Readonly<Record<string, string>> = { lt: "<", gt: ">", amp: "&", quot: '"', apos: "'" };

/** Text or an attribute of XML with its references resolved. */
export function xmlText(escaped: string): string {
  return escaped.replace(/&(?:#(\d+)|#x([0-9a-f]+)|(lt|gt|amp|quot|apos));/gi, (_, decimal, hex, name) => {
    if (name !== undefined) return NAMED[String(name).toLowerCase()] ?? "";
    return String.fromCodePoint(decimal === undefined ? parseInt(hex, 16) : Number(decimal));
  });
}
