import type { NotedCell } from "../sheet/notedCell";
import type { SheetTable } from "../sheet/sheetTable";
import type { TableKind } from "../sheet/tableKind";
import type { CheckedPart } from "./checkedPart";
import type { CheckedRow } from "./checkedRow";
import type { CheckedWorkbook } from "./checkedWorkbook";
import type { CheckFacts } from "./checkFacts";
import type { Repair, Severity } from "./finding";

/** The cell a rule speaks of. */
type RemarkPlace =
  | {
      readonly row: CheckedRow;
      /** The field whose cell is meant; a field the table lacks points at the row's first cell. */
      readonly field: string;
    }
  | { readonly cell: NotedCell };

/** What a rule says about one cell. */
export type Remark<MessageId extends string> = RemarkPlace & {
  readonly messageId: MessageId;
  /** Every {{name}} of the message. */
  readonly data: Readonly<Record<string, string | number>>;
  readonly fix?: Repair;
  readonly suggestions?: readonly Repair[];
};

/** How a rule reports. */
type Report<MessageId extends string> = (remark: Remark<MessageId>) => void;

/** What every rule says of itself; the documentation is made from it. */
interface RulePassport<MessageId extends string> {
  /** The name of the rule's file and of its export. */
  readonly id: string;
  /** What it looks for, one sentence. */
  readonly about: string;
  /** Why it matters to a stylist, one sentence; shown with every finding. */
  readonly why: string;
  readonly severity: Severity;
  /** True when some finding of the rule carries a fix. */
  readonly fixable: boolean;
  /** Message id to template; {{name}} stands for a value of the remark's data. */
  readonly messages: Readonly<Record<MessageId, string>>;
  /** The tables it looks at. */
  readonly tables: readonly TableKind[];
  /** What else it consults: a change there makes the rule look again. */
  readonly uses?: readonly CheckedPart[];
  /**
   * The only fields it reads of a part, so that a change of other cells does not make it look again; of a part left out
   * it may read any. A rule over cells or rows looks again at a changed row of its own tables in any case.
   */
  readonly reads?: Readonly<Partial<Record<CheckedPart, readonly string[]>>>;
}

/** Looks at one cell at a time; `fields` says which, by kind of table. Depends on nothing but that row and the tables in `uses`. */
export interface CellRule<MessageId extends string> extends RulePassport<MessageId> {
  readonly scope: "cell";
  readonly fields: Readonly<Partial<Record<TableKind, readonly string[]>>>;
  readonly check: (row: CheckedRow, field: string, report: Report<MessageId>, facts: CheckFacts) => void;
}

/** Looks at one row at a time. Depends on nothing but that row and the tables in `uses`. */
export interface RowRule<MessageId extends string> extends RulePassport<MessageId> {
  readonly scope: "row";
  /** The rule is passed over in a table that lacks one of these columns. */
  readonly needs: readonly string[];
  readonly check: (row: CheckedRow, report: Report<MessageId>, facts: CheckFacts) => void;
}

/** Looks at a whole table, for what only shows between its rows. */
export interface TableRule<MessageId extends string> extends RulePassport<MessageId> {
  readonly scope: "table";
  /** The rule is passed over in a table that lacks one of these columns. */
  readonly needs: readonly string[];
  readonly check: (table: SheetTable, report: Report<MessageId>, facts: CheckFacts) => void;
}

/** Looks at all tables at once. */
export interface WorkbookRule<MessageId extends string> extends RulePassport<MessageId> {
  readonly scope: "workbook";
  readonly check: (workbook: CheckedWorkbook, report: Report<MessageId>, facts: CheckFacts) => void;
}

/** A rule of any scope. */
export type Rule<MessageId extends string = string> =
  CellRule<MessageId> | RowRule<MessageId> | TableRule<MessageId> | WorkbookRule<MessageId>;
