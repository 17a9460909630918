import { lookKey } from "./lookKey";

/** The keys of the looks that an After cell names, parted by a comma, a semicolon or a new line. */
export function readAfter(text: string): readonly string[] {
  return text
    .split(/[,;\n]/)
    .map(lookKey)
    .filter((key) => key !== "");
}
