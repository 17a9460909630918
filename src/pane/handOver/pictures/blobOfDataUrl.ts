/** What a data address in base64 holds (RFC 2397), without asking the browser to fetch it; null where it is no such address. */
export function blobOfDataUrl(dataUrl: string): Blob | null {
  const [, type, base64] = /^data:([\w/+.-]+);base64,([A-Za-z0-9+/]*={0,2})$/.exec(dataUrl) ?? [];
  if (base64 === undefined) return null;
  return new Blob([Uint8Array.from(atob(base64), (octet) => octet.charCodeAt(0))], { type });
}
