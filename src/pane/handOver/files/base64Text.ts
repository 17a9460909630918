/** A text in UTF-8 as base64 (RFC 4648, 4). */
export function base64Text(text: string): string {
  let octets = "";
  for (const octet of new TextEncoder().encode(text)) octets += String.fromCharCode(octet);
  return btoa(octets);
}
