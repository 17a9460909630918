/** What a cell of the fake workbook was given. Only text that was typed with an apostrophe, or into a text format, starts with =. */
interface FakeContent {
  readonly value?: number | string | boolean;
  readonly error?: string;
  readonly formula?: string;
  readonly format: string;
}

/** What a cell shows. */
export interface Shown {
  readonly value: number | string | boolean;
  readonly type: "Empty" | "String" | "Double" | "Boolean" | "Error";
  readonly formula: number | string | boolean;
  readonly isSpilled: boolean;
}

export interface FakeArea {
  readonly rowIndex: number;
  readonly columnIndex: number;
  readonly rowCount: number;
  readonly columnCount: number;
}

/** A picture over a cell, as wide as it and so many rows high. */
export interface FakePicture {
  readonly id: string;
  readonly name: string;
  readonly type: "Image" | "GeometricShape";
  readonly visible: boolean;
  readonly row: number;
  readonly column: number;
  readonly rowCount: number;
  /** What the host draws of it, in base64. */
  readonly drawn: string;
}

export interface FakeSheet {
  readonly id: string;
  name: string;
  visibility: "Visible" | "Hidden";
  isProtected: boolean;
  cells: Map<string, FakeContent>;
  tables: ({ name: string } & FakeArea)[];
  merged: FakeArea[];
  pictures: FakePicture[];
  /** What a column offers to choose from, by column. */
  lists: Map<number, { readonly rule?: unknown; readonly errorAlert?: unknown }>;
}

/** A custom XML part of the workbook; the host gives it its id. */
export interface FakeXmlPart {
  readonly id: string;
  xml: string;
}

interface FakeEvent {
  readonly name: string;
  readonly worksheetId: string;
  readonly address: string;
  readonly changeType: string;
}

/** A workbook in memory that takes what is set as Excel does: as if it had been typed. */
export interface FakeWorkbook {
  sheets: FakeSheet[];
  customXmlParts: FakeXmlPart[];
  is1904: boolean;
  /** Counts what the host was asked to build, for ids and names. */
  built: number;
  /** Makes every table refuse another size, once asked for. */
  tablesRefuse?: boolean;
  /** The active cell, at the corner of what is selected. */
  active: { sheetId: string; row: number; column: number; rowCount?: number; columnCount?: number };
  readonly handlers: Set<{ readonly name: string; readonly handle: (event: FakeEvent) => Promise<void> }>;
  tell(event: FakeEvent): void;
}

const EMPTY: FakeContent = { format: "General" };

const MONTHS = "jan feb mar apr may jun jul aug sep oct nov dec".split(" ");

export function createFakeWorkbook(): FakeWorkbook {
  const handlers: FakeWorkbook["handlers"] = new Set();
  return {
    sheets: [],
    customXmlParts: [],
    is1904: false,
    built: 1,
    active: { sheetId: "", row: 0, column: 0 },
    handlers,
    tell(event) {
      for (const handler of [...handlers]) {
        if (handler.name === event.name) setTimeout(() => void handler.handle(event), 0);
      }
    },
  };
}

export function contentAt(sheet: FakeSheet, row: number, column: number): FakeContent {
  return sheet.cells.get(`${row},${column}`) ?? EMPTY;
}

export function formatCell(sheet: FakeSheet, row: number, column: number, format: string): void {
  sheet.cells.set(`${row},${column}`, { ...contentAt(sheet, row, column), format });
}

/** Sets a cell as Excel does; a hidden cell of a merged block swallows it. */
export function fillCell(sheet: FakeSheet, row: number, column: number, typed: unknown): void {
  const inside = sheet.merged.some(
    (area) => covers(area, row, column) && (area.rowIndex !== row || area.columnIndex !== column),
  );
  if (inside || typed === null) return;
  const { format } = contentAt(sheet, row, column);
  sheet.cells.set(`${row},${column}`, { ...asTyped(typed, format), format });
}

function covers(area: FakeArea, row: number, column: number): boolean {
  return (
    row >= area.rowIndex &&
    row < area.rowIndex + area.rowCount &&
    column >= area.columnIndex &&
    column < area.columnIndex + area.columnCount
  );
}

function asTyped(typed: unknown, format: string): Omit<FakeContent, "format"> {
  if (typed === "") return {};
  if (typeof typed === "string" && typed.startsWith("'")) return { value: typed.slice(1) };
  if (format === "@") return { value: String(typed) };
  if (typeof typed !== "string") return { value: typed as number | boolean };
  if (typed.startsWith("=")) return { formula: typed };
  if (/^[+\-@]\D/.test(typed) || /^\+\d+ /.test(typed)) throw hostError("InvalidArgument", "The argument is invalid");
  if (/^#(N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?)$/.test(typed)) return { error: typed };
  if (/^(true|false)$/i.test(typed)) return { value: typed.toLowerCase() === "true" };
  const number = Number(typed.replace(/[£€$,]/g, "").replace(/%$/, ""));
  if (Number.isFinite(number)) return { value: typed.endsWith("%") ? number / 100 : number };
  const day = /^(\d{1,4})[-/ ](\d{1,2}|[a-z]{3})(?:[-/ ](\d{1,4}))?$/i.exec(typed);
  if (!day) return { value: typed };
  const [, first = "", middle = "", last = "2026"] = day;
  const month = MONTHS.indexOf(middle.toLowerCase()) + 1 || Number(middle);
  const [year, dayOfMonth] = first.length === 4 ? [first, last] : [last, first];
  return { value: Date.UTC(Number(year), month - 1, Number(dayOfMonth)) / 86_400_000 + 25_569 };
}

/** Every cell that shows something, by "row,column"; the formulas a test needs are worked out, no others. */
export function shownCells(sheet: FakeSheet): Map<string, Shown> {
  const shown = new Map<string, Shown>();
  for (const [key, content] of sheet.cells) {
    const [row = 0, column = 0] = key.split(",").map(Number);
    if (content.formula !== undefined) {
      evaluate(content.formula, sheet).forEach((result, index) => {
        const isSpilled = index > 0;
        const formula = isSpilled ? result : (content.formula as string);
        shown.set(`${row + index},${column}`, { ...typed(result), formula, isSpilled });
      });
    } else if (content.error !== undefined) {
      shown.set(key, { ...typed(content.error), type: "Error", formula: content.error, isSpilled: false });
    } else if (content.value !== undefined) {
      shown.set(key, { ...typed(content.value, true), formula: content.value, isSpilled: false });
    }
  }
  return shown;
}

function typed(value: number | string | boolean, isConstant = false): Pick<Shown, "value" | "type"> {
  if (typeof value === "number") return { value, type: "Double" };
  if (typeof value === "boolean") return { value, type: "Boolean" };
  return { value, type: !isConstant && value.startsWith("#") ? "Error" : "String" };
}

function evaluate(formula: string, sheet: FakeSheet): (number | string)[] {
  if (formula === '=""') return [""];
  if (formula === "=NA()") return ["#N/A"];
  if (formula === "=1/0") return ["#DIV/0!"];
  if (formula === "=1+1") return [2];
  const sequence = /^=SEQUENCE\((\d+)\)$/.exec(formula);
  if (sequence) return Array.from({ length: Number(sequence[1]) }, (_, index) => index + 1);
  const product = /^=A(\d+)\*(\d+)$/.exec(formula);
  if (!product) return ["#NAME?"];
  const row = Number(product[1]) - 1;
  const factor = shownCells({ ...sheet, cells: new Map([...sheet.cells].filter(([key]) => key === `${row},0`)) });
  return [Number(factor.get(`${row},0`)?.value ?? 0) * Number(product[2])];
}

/** An error as the host throws it. */
export function hostError(code: string, message: string): Error & { code: string } {
  return Object.assign(new Error(message), { code });
}
