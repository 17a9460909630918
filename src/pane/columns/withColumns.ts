import type { KindColumnChoice } from "../../sheet/columnChoices";
import { columnsText } from "../../sheet/columnsText";
import { readColumnChoices } from "../../sheet/readColumnChoices";
import { sameHeading } from "../../sheet/sameHeading";
import type { SheetTable } from "../../sheet/sheetTable";
import type { FunctionDoc } from "../functions/FunctionDoc";
import type { FormulaGap } from "./FormulaGap";
import { ownCalls, type OwnCall } from "./ownCalls";
import { tablesNamed } from "./tablesNamed";

/** What a formula is looked at with. */
export interface FormulaSurroundings {
  readonly docs: ReadonlyMap<string, FunctionDoc>;
  readonly tables: readonly SheetTable[];
  /** The name of the sheet the formula stands on. */
  readonly homeSheet: string;
  readonly choicesFor: (table: SheetTable) => readonly KindColumnChoice[];
}

/**
 * A formula with the columns argument that the choices made by hand ask for, in every call of ours that takes such a table;
 * null where it needs none. What the formula says itself and the choices do not speak of stays.
 */
export function withColumns(
  formula: string,
  surroundings: FormulaSurroundings,
): Pick<FormulaGap, "after" | "obstacle"> | null {
  let after = formula;
  // Each turn mends the last call that needs it; those before keep their places, and calls are fewer than characters.
  for (let turn = 0; turn < formula.length; turn++) {
    const wanted = [...ownCalls(after)].reverse().flatMap((call) => wantedIn(call, surroundings) ?? [])[0];
    if (wanted === undefined) return after === formula ? null : { after, obstacle: "" };
    if (typeof wanted === "string") return { after: null, obstacle: wanted };
    after = after.slice(0, wanted.from) + wanted.text + after.slice(wanted.until);
  }
  return null;
}

interface Change {
  readonly from: number;
  readonly until: number;
  readonly text: string;
}

/** What to change in one call, or why it cannot be; null where it is right as it is. */
function wantedIn(call: OwnCall, surroundings: FormulaSurroundings): Change | string | null {
  const { docs, tables, homeSheet, choicesFor } = surroundings;
  const params = docs.get(call.id)?.params ?? [];
  const place = params.findIndex(({ name }) => name === "columns");
  const rowsPlace = params.findIndex(({ matrix }) => matrix);
  if (place < 0 || rowsPlace < 0) return null;
  const table = tablesNamed(call.args[rowsPlace]?.text ?? "", homeSheet, tables).find(
    (named) => choicesFor(named).length > 0,
  );
  if (table === undefined) return null;
  const wanted = choicesFor(table);

  const held = call.args[place]?.text.trim() ?? "";
  const typed = held === "" ? "" : textIn(held);
  if (typed === null) return `it takes its columns from ${held}; write there: ${columnsText(wanted).text}`;
  const own = readColumnChoices(typed, table.kind);
  if (!own.ok) return `its columns, "${typed}", are not understood; write there: ${columnsText(wanted).text}`;
  const isSaid = ({ field, heading }: KindColumnChoice): boolean =>
    own.value.some(
      (choice) =>
        choice.field === field &&
        (heading === null || choice.heading === null
          ? heading === choice.heading
          : sameHeading(choice.heading, heading)),
    );
  if (wanted.every(isSaid)) return null;
  const untouched = own.value.filter(
    (choice) =>
      !wanted.some(
        ({ field, heading }) =>
          field === choice.field ||
          (heading !== null && choice.heading !== null && sameHeading(heading, choice.heading)),
      ),
  );
  const { text, unsaid } = columnsText([...untouched, ...wanted]);
  if (unsaid.length > 0) {
    return `a formula cannot name the heading "${unsaid[0]?.heading ?? ""}"; take the ; or the line break out of it`;
  }
  const literal = `"${text.replace(/"/g, '""')}"`;
  const argument = call.args[place];
  if (argument !== undefined) return { from: argument.from, until: argument.until, text: literal };
  return { from: call.closesAt, until: call.closesAt, text: ",".repeat(place - call.args.length + 1) + literal };
}

/** The text of a literal, or null where the argument is anything else. */
function textIn(argument: string): string | null {
  const found = /^"((?:[^"]|"")*)"$/.exec(argument);
  return found === null ? null : found[1]!.replace(/""/g, '"');
}
