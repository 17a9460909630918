import { showGiven } from "../../domain/showGiven";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { isTyped } from "../isTyped";
import { replaceCell } from "../replaceCell";

// \s has the wide, narrow and non-breaking ones too; those of no width at all are seen by nobody.
const SPACES = /\s+/g;
const STRAY = /^\s|\s$|\s\s|[^\S ]|[\u200b\u200c\u2060\ufeff]/;
const NO_WIDTH = /[\u200b\u200c\u2060\ufeff]/g;

export const straySpaces = defineRule({
  id: "straySpaces",
  about: "A name with spaces around it, or more than one in a row.",
  why: "Filters and lookups take a name with a stray space for another name.",
  severity: "note",
  fixable: true,
  scope: "cell",
  tables: ["pieces", "lenders", "looks", "requests", "receipts", "stops"],
  fields: {
    pieces: ["piece", "lender", "kind", "look", "talent", "currency"],
    lenders: ["lender", "kind"],
    looks: ["look", "talent", "set"],
    requests: ["lender"],
    receipts: ["shop"],
    stops: ["stop"],
  },
  messages: {
    spaces: '"{{given}}" has stray spaces. Write "{{tidy}}".',
  },
  check(row, field, report) {
    const cell = cellIn(row, field);
    if (typeof cell !== "string" || !STRAY.test(cell)) return;
    const tidy = cell.replace(NO_WIDTH, "").replace(SPACES, " ").trim();
    if (tidy === cell || tidy === "" || !isTyped(row, field)) return;
    const fix = { label: `Write "${tidy}"`, edits: [replaceCell(row, field, tidy)] };
    report({ row, field, messageId: "spaces", data: { given: showSpaces(cell), tidy: showGiven(tidy) }, fix });
  },
});

/** The spaces must show in the message, so they are not tidied as elsewhere. */
function showSpaces(text: string): string {
  const shown = text.replace(NO_WIDTH, "·").replace(SPACES, (run) => "·".repeat(run.length));
  return shown.length > 40 ? `${shown.slice(0, 39)}…` : shown;
}
