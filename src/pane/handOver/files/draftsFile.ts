import { zipSync } from "fflate";
import type { LenderLetter } from "../documents/HandOverDocument";
import type { HandOverFile } from "./HandOverFile";
import { mailDraft } from "./mailDraft";
import { safeFileName } from "./safeFileName";

/** Mail drafts as one file: the draft itself, or an archive of them, since a browser asks before it saves several files. */
export function draftsFile(letters: readonly LenderLetter[], title: string): HandOverFile {
  const [only] = letters;
  if (only !== undefined && letters.length === 1)
    return {
      name: safeFileName(`Loan request ${only.lender}`, "eml"),
      type: "message/rfc822",
      content: mailDraft(only),
    };
  const entries: Record<string, Uint8Array> = {};
  for (const letter of letters) {
    const name = safeFileName(`Loan request ${letter.lender}`, "eml");
    let own = name;
    for (let again = 2; Object.hasOwn(entries, own); again++) own = name.replace(/\.eml$/, ` ${again}.eml`);
    entries[own] = new TextEncoder().encode(mailDraft(letter));
  }
  // A fixed date, so that the same letters make the same file.
  const content = zipSync(entries, { mtime: new Date(1980, 0, 1) });
  return { name: safeFileName(title, "zip"), type: "application/zip", content };
}
