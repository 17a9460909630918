import { buildingBehaviours, setBuilt } from "./buildingBehaviours";
import { excelMembers } from "./excelMembers";
import {
  ITEM_KINDS,
  type Model,
  overlap,
  PARTS,
  partModel,
  propertyOf,
  type RangeModel,
  rangeModel,
  sheetById,
  usedRange,
} from "./excelModels";
import { keptBehaviours } from "./keptBehaviours";
import { type FakeArea, type FakeSheet, type FakeWorkbook, fillCell, formatCell, hostError } from "./fakeWorkbook";
import { pictureBehaviours } from "./pictureBehaviours";
import { tellEdit } from "./tellEdit";

/** What the strict fake counts, and how it can be made to misbehave. */
export interface StrictExcel {
  /** Syncs since the start, or since it was last set to 0. */
  syncs: number;
  /** The syncs to come that ask for cells and are refused with ResponsePayloadSizeLimitExceeded. */
  answersToRefuse: number;
  /** The writes of the next syncs that still succeed; then one fails, once. null never fails. */
  writesBeforeFailure: number | null;
  /** Takes the last sync that changed cells back. */
  undo(): void;
  uninstall(): void;
}

type Resolve = () => Model | null;

interface Proxied {
  readonly kind: string;
  readonly resolve: Resolve;
  readonly run: Run;
  readonly loaded: Map<string, unknown>;
  readonly parts: Map<string, unknown>;
  isNull: boolean | undefined;
}

interface Run {
  queue: (() => void)[];
  isOpen: boolean;
  readonly context: unknown;
}

const states = new WeakMap<object, Proxied>();

/**
 * Puts an Excel and an Office on the global object that are as strict as the real ones: a property is readable only
 * once it was loaded and synced, nothing works after its run, what the requirement set does not bring is not there.
 */
export function installStrictExcel(workbook: FakeWorkbook, excelApi: string): StrictExcel {
  const control: StrictExcel = {
    syncs: 0,
    answersToRefuse: 0,
    writesBeforeFailure: null,
    undo: () => {
      const before = undoStack.pop();
      if (before === undefined) throw new Error("there is nothing to undo");
      for (const [sheet, cells] of before) sheet.cells = cells;
    },
    uninstall: () => {
      Reflect.deleteProperty(globalThis, "Excel");
      Reflect.deleteProperty(globalThis, "Office");
    },
  };
  const undoStack: Map<FakeSheet, FakeSheet["cells"]>[] = [];
  let answeredCells = 0;
  let wroteInSync = false;

  const isSupported = (version: string): boolean => {
    const [major = 0, minor = 0] = version.split(".").map(Number);
    const [hasMajor = 0, hasMinor = 0] = excelApi.split(".").map(Number);
    return major < hasMajor || (major === hasMajor && minor <= hasMinor);
  };

  function proxied(kind: string, run: Run, resolve: Resolve): unknown {
    const state: Proxied = {
      kind,
      resolve: once(resolve),
      run,
      loaded: new Map(),
      parts: new Map(),
      isNull: undefined,
    };
    const proxy = new Proxy({} as object, {
      get(_, member) {
        // A promise may ask any value whether it is thenable.
        if (typeof member === "symbol" || member === "then") return undefined;
        return read(state, member, proxy);
      },
      set(_, member, value) {
        needMember(state, String(member));
        queue(state, () => setMember(state, String(member), value));
        return true;
      },
    });
    states.set(proxy, state);
    return proxy;
  }

  function needMember(state: Proxied, member: string): void {
    if (!state.run.isOpen) throw hostError("InvalidObjectPath", `${state.kind}.${member} is used after its run`);
    const version = excelMembers[state.kind]?.[member];
    if (version === undefined) throw new TypeError(`${state.kind} has no ${member}`);
    if (version !== "" && !isSupported(version)) {
      throw hostError("ApiNotFound", `${state.kind}.${member} needs ExcelApi ${version}, this host has ${excelApi}`);
    }
  }

  function queue(state: Proxied, command: () => void): void {
    if (!state.run.isOpen) throw hostError("InvalidObjectPath", `${state.kind} is used after its run`);
    state.run.queue.push(command);
  }

  function model(state: Proxied): Model {
    const found = state.resolve();
    if (found === null) throw hostError("ItemNotFound", "The requested resource doesn't exist");
    return found;
  }

  function read(state: Proxied, member: string, proxy: object): unknown {
    if (member === "load") {
      return (paths: string) => {
        for (const path of paths.split(",")) checkPath(state.kind, path.trim().split("/"), state);
        queue(state, () => {
          state.isNull = state.resolve() === null;
          if (!state.isNull) for (const path of paths.split(",")) loadPath(state, path.trim().split("/"));
        });
        return proxy;
      };
    }
    if (member === "isNullObject") {
      if (state.isNull === undefined) throw hostError("PropertyNotLoaded", `${state.kind}.isNullObject before sync`);
      return state.isNull;
    }
    if (member === "context") return state.run.context;
    needMember(state, member);
    if (member.startsWith("on")) return eventOf(state, member);
    const behaviour = behaviours[state.kind]?.[member];
    if (behaviour !== undefined) return (...args: unknown[]) => behaviour(state, args);
    const part = partOf(state, member);
    if (part !== undefined) return part;
    if (state.isNull) throw hostError("InvalidObjectPath", `${state.kind}.${member} of a null object`);
    if (!state.loaded.has(member)) {
      throw hostError("PropertyNotLoaded", `${state.kind}.${member} is read before it was loaded and synced`);
    }
    return state.loaded.get(member);
  }

  /** A navigation property: an object of its own, there without loading. */
  function partOf(state: Proxied, member: string): unknown {
    const kind = PARTS[`${state.kind}.${member}`];
    if (kind === undefined) return undefined;
    const held = state.parts.get(member);
    if (held !== undefined) return held;
    const part = proxied(kind, state.run, () => partModel(model(state), `${state.kind}.${member}`));
    state.parts.set(member, part);
    return part;
  }

  function checkPath(kind: string, path: readonly string[], state: Proxied): void {
    const [member = "", ...rest] = path;
    needMember({ ...state, kind }, member);
    const next = member === "items" ? ITEM_KINDS[kind] : PARTS[`${kind}.${member}`];
    if (rest.length > 0 && next === undefined) throw new TypeError(`${kind}.${member} has no parts`);
    if (next !== undefined && rest.length > 0) checkPath(next, rest, state);
  }

  function loadPath(state: Proxied, path: readonly string[]): void {
    const [member = "", ...rest] = path;
    const itemKind = member === "items" ? ITEM_KINDS[state.kind] : undefined;
    if (itemKind !== undefined) {
      const held = state.loaded.get("items") as object[] | undefined;
      const models = (model(state).items as () => Model[])();
      const items = held ?? models.map((item) => proxied(itemKind, state.run, () => item) as object);
      state.loaded.set("items", items);
      if (rest.length > 0) for (const item of items) loadPath(states.get(item) as Proxied, rest);
      return;
    }
    const part = partOf(state, member);
    if (part !== undefined) {
      loadPath(states.get(part as object) as Proxied, rest);
      return;
    }
    const value = propertyOf(state.kind, model(state), member, workbook);
    if (member === "values") answeredCells += (value as unknown[][]).flat().length;
    state.loaded.set(member, value);
  }

  function setMember(state: Proxied, member: string, value: unknown): void {
    if (setBuilt(state.kind, model(state), member, value, workbook)) return;
    if (state.kind !== "Range" || (member !== "formulas" && member !== "values" && member !== "numberFormat")) {
      throw new TypeError(`${state.kind}.${member} cannot be set`);
    }
    if (control.writesBeforeFailure === 0) {
      control.writesBeforeFailure = null;
      throw hostError("GeneralException", "There was an internal error while processing the request.");
    }
    if (control.writesBeforeFailure !== null) control.writesBeforeFailure -= 1;
    const { sheet, ...area } = model(state) as unknown as RangeModel;
    if (sheet.isProtected) throw hostError("AccessDenied", "You do not have permission to perform this action");
    const rows = value as unknown[][];
    if (rows.length !== area.rowCount || rows.some((row) => row.length !== area.columnCount)) {
      throw hostError("InvalidArgument", "The number of rows or columns in the input array doesn't match the range");
    }
    if (!wroteInSync) undoStack.push(new Map(workbook.sheets.map((each) => [each, new Map(each.cells)])));
    wroteInSync = true;
    rows.forEach((row, r) =>
      row.forEach((cell, c) => {
        const [atRow, atColumn] = [area.rowIndex + r, area.columnIndex + c];
        if (member !== "numberFormat") fillCell(sheet, atRow, atColumn, cell);
        else if (cell !== null) formatCell(sheet, atRow, atColumn, String(cell));
      }),
    );
    if (member !== "numberFormat") tellEdit(workbook, sheet, area);
  }

  function eventOf(state: Proxied, member: string): unknown {
    return {
      add(handle: (event: unknown) => Promise<void>) {
        const handler = { name: member, handle };
        queue(state, () => workbook.handlers.add(handler));
        return { context: state.run.context, remove: () => queue(state, () => workbook.handlers.delete(handler)) };
      },
    };
  }

  const behaviours: Record<string, Record<string, (state: Proxied, args: unknown[]) => unknown>> = {
    Workbook: {
      getActiveCell: ({ run }) =>
        proxied("Range", run, () => {
          const { sheetId, row, column } = workbook.active;
          return rangeModel(sheetById(workbook, sheetId), row, column, 1, 1);
        }),
      getSelectedRange: ({ run }) =>
        proxied("Range", run, () => {
          const { sheetId, row, column, rowCount = 1, columnCount = 1 } = workbook.active;
          return rangeModel(sheetById(workbook, sheetId), row, column, rowCount, columnCount);
        }),
    },
    WorksheetCollection: {
      getItem: ({ run }, [id]) => proxied("Worksheet", run, () => sheetById(workbook, String(id))),
      getItemOrNullObject: ({ run }, [key]) =>
        proxied(
          "Worksheet",
          run,
          () =>
            (workbook.sheets.find((sheet) => sheet.id === key || sheet.name === key) as unknown as Model | null) ??
            null,
        ),
    },
    Worksheet: {
      activate: (state) =>
        queue(state, () => void (workbook.active = { ...workbook.active, sheetId: String(model(state).id) })),
      getRangeByIndexes: (state, [row, column, rowCount, columnCount]) =>
        proxied("Range", state.run, () =>
          rangeModel(model(state), Number(row), Number(column), Number(rowCount), Number(columnCount)),
        ),
      getUsedRangeOrNullObject: (state) =>
        proxied("Range", state.run, () => usedRange(model(state) as unknown as FakeSheet)),
    },
    Table: {
      getRange: (state) =>
        proxied("Range", state.run, () => {
          const table = model(state) as unknown as FakeArea & { sheet: FakeSheet };
          return rangeModel(
            table.sheet as unknown as Model,
            table.rowIndex,
            table.columnIndex,
            table.rowCount,
            table.columnCount,
          );
        }),
    },
    Range: {
      select: (state) =>
        queue(state, () => {
          const { sheet, rowIndex, columnIndex } = model(state) as unknown as RangeModel;
          if (workbook.active.sheetId !== sheet.id) throw hostError("InvalidSelection", "The sheet is not active");
          workbook.active = { sheetId: sheet.id, row: rowIndex, column: columnIndex };
        }),
      getMergedAreasOrNullObject: (state) =>
        proxied("RangeAreas", state.run, () => {
          const { sheet, ...area } = model(state) as unknown as RangeModel;
          const touching = sheet.merged.filter((merged) => overlap(merged, area));
          return touching.length === 0 ? null : { areas: touching };
        }),
    },
    ...keptBehaviours({ workbook, proxied, queue, model }),
    Functions: {
      date: ({ run }, [year, month, day]) =>
        proxied("FunctionResult", run, () => {
          const serial = Date.UTC(Number(year), Number(month) - 1, Number(day)) / 86_400_000 + 25_569;
          return { value: workbook.is1904 ? serial - 1462 : serial };
        }),
    },
  };

  const building = buildingBehaviours<Proxied>({
    workbook,
    proxied: (kind, run, resolve) => proxied(kind, run as Run, resolve),
    queue,
    model,
    modelOf: (proxy) => model(states.get(proxy) as Proxied),
  });
  const built = [...Object.entries(building), ...Object.entries(pictureBehaviours<Proxied>({ queue, model }))];
  for (const [kind, members] of built) behaviours[kind] = { ...behaviours[kind], ...members };

  async function sync(run: Run): Promise<void> {
    if (!run.isOpen) throw hostError("InvalidRequestContext", "the context is used after its run");
    control.syncs += 1;
    const queued = run.queue;
    run.queue = [];
    answeredCells = 0;
    wroteInSync = false;
    await Promise.resolve();
    for (const command of queued) command();
    if (answeredCells > 0 && control.answersToRefuse > 0) {
      control.answersToRefuse -= 1;
      throw hostError("ResponsePayloadSizeLimitExceeded", "The response payload size has exceeded the limit.");
    }
  }

  function newRun(): Run {
    const run: Run = { queue: [], isOpen: true, context: null as unknown };
    const context = {
      workbook: proxied("Workbook", run, () => workbook as unknown as Model),
      sync: () => sync(run),
    };
    Object.assign(run, { context });
    runs.set(context, run);
    return run;
  }
  const runs = new WeakMap<object, Run>();

  Object.assign(globalThis, {
    Excel: {
      async run(first: unknown, second?: (context: unknown) => Promise<unknown>): Promise<unknown> {
        const batch = second ?? (first as (context: unknown) => Promise<unknown>);
        const run = (typeof first === "object" && first !== null ? runs.get(first) : undefined) ?? newRun();
        run.isOpen = true;
        try {
          return await batch(run.context);
        } finally {
          run.isOpen = false;
        }
      },
    },
    Office: {
      context: {
        requirements: { isSetSupported: (set: string, version: string) => set === "ExcelApi" && isSupported(version) },
      },
    },
  });
  return control;
}

/** An object path is resolved once, when it is first used. */
function once(resolve: Resolve): Resolve {
  let held: { readonly model: Model | null } | undefined;
  return () => (held ??= { model: resolve() }).model;
}
