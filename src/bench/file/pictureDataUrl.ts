import { base64Text } from "../../pane/handOver/files/base64Text";

/** How the kinds of pictures that browsers show begin, "" standing for any byte (each kind's own specification). */
const SIGNATURES: readonly (readonly [type: string, bytes: readonly (number | "")[]])[] = [
  ["png", [0x89, 0x50, 0x4e, 0x47]],
  ["jpeg", [0xff, 0xd8, 0xff]],
  ["gif", [0x47, 0x49, 0x46, 0x38]],
  ["webp", [0x52, 0x49, 0x46, 0x46, "", "", "", "", 0x57, 0x45, 0x42, 0x50]],
  ["bmp", [0x42, 0x4d]],
];

/** A picture as a data address, told by how it begins and not by its name; null for a kind that browsers do not show. */
export function pictureDataUrl(bytes: Uint8Array): string | null {
  const type = SIGNATURES.find(([, signature]) =>
    signature.every((byte, index) => byte === "" || bytes[index] === byte),
  );
  return type === undefined ? null : `data:image/${type[0]};base64,${base64Text(bytes)}`;
}
