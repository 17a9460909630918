/** A text in UTF-8, or octets as they are, as base64 (RFC 4648, 4). */
export function base64Text(content: string | Uint8Array): string {
  let octets = "";
  for (const octet of typeof content === "string" ? new TextEncoder().encode(content) : content)
    octets += String.fromCharCode(octet);
  return btoa(octets);
}
