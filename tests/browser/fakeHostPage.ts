import { createFakeWorkbook } from "../excel/fakeWorkbook";
import { installStrictExcel } from "../excel/strictExcel";
import { strictProbe } from "../excel/strictProbe";

/**
 * Stands in for the host and its library in a browser page: the strict Excel over a small workbook, CustomFunctions, and
 * the shared runtime's own calls. `fakeHost` on the global object is what a test holds it by.
 */
const workbook = createFakeWorkbook();
const excel = installStrictExcel(workbook, "1.20");
const probe = strictProbe(workbook, excel);
const associated = new Map<string, (...args: unknown[]) => unknown>();
const handlers: ((message: { visibilityMode: string }) => void)[] = [];

async function fill(): Promise<string> {
  const sheetId = await probe.addSheet("Pieces");
  workbook.active = { sheetId, row: 0, column: 0 };
  const rows = [
    ["Piece", "Description", "Lender", "Value", "Out", "Due", "Back"],
    ["P1", "Silk coat", "Maison Orla", 1200, 46080, "'5 Mar 2026", ""],
    ["P2", "Brogues", "Ado & Fils", 300, 46080, 46090, 46089],
  ];
  for (const [row, cells] of rows.entries()) {
    for (const [column, cell] of cells.entries()) await probe.type(sheetId, row, column, cell);
  }
  return sheetId;
}
const filled = fill();

Object.assign((globalThis as unknown as { Office: object }).Office, {
  VisibilityMode: { taskpane: "Taskpane", hidden: "Hidden" },
  onReady: () => filled,
  addin: {
    onVisibilityModeChanged(handler: (typeof handlers)[number]) {
      handlers.push(handler);
      return Promise.resolve(() => Promise.resolve());
    },
  },
});

Object.assign(globalThis, {
  CustomFunctions: {
    associate: (id: string, binding: (...args: unknown[]) => unknown) => associated.set(id, binding),
    Error: class {
      constructor(
        readonly code: string,
        readonly message: string,
      ) {}
    },
    ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
  },
  fakeHost: {
    associated: () => [...associated.keys()],
    call: (id: string, ...args: unknown[]) => associated.get(id)?.(...args),
    showPane: () => handlers.forEach((handler) => handler({ visibilityMode: "Taskpane" })),
    cell: (row: number, column: number) => workbook.sheets[0]?.cells.get(`${row},${column}`),
    type: async (row: number, column: number, typed: number | string) => probe.type(await filled, row, column, typed),
    active: () => workbook.active,
  },
});
