const LONGEST_OCTETS = 75;

/**
 * A content line of a calendar file, folded as RFC 5545 (3.1) has it: no line longer than 75 octets without its end, each line after
 * the first begun with one space. No character is torn apart.
 */
export function foldedLine(line: string): string {
  const encoder = new TextEncoder();
  let folded = "";
  let octets = 0;
  for (const character of line) {
    const length = encoder.encode(character).length;
    if (octets + length > LONGEST_OCTETS) {
      folded += "\r\n ";
      octets = 1;
    }
    folded += character;
    octets += length;
  }
  return folded;
}
