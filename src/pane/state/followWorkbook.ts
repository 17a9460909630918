import type { CheckRun } from "../../checks/checkRun";
import type { Finding } from "../../checks/finding";
import type { Outcome } from "../../domain/outcome";
import { succeed } from "../../domain/succeed";
import type { Problem } from "../../domain/problem";
import type { SheetPort } from "../../sheet/SheetPort";
import type { KeptChoices } from "../../sheet/keptChoices";
import type { WorkbookTables } from "../../sheet/readWorkbook";
import type { WorkbookSnapshot } from "../../sheet/sheetSnapshot";
import type { ReadTables } from "./ReadTables";
import { replaceSheets } from "./replaceSheets";

/** What is done with a workbook between reading it and showing it. Both run to their end at once, so the follower yields between them. */
export interface WorkOnWorkbook {
  readonly findTables: (workbook: WorkbookSnapshot, choices: KeptChoices) => WorkbookTables;
  /** What was chosen by hand about the tables, as the workbook keeps it; null where it cannot be read just now. */
  readonly readChoices: () => Promise<KeptChoices | null>;
  /** `previous` is the last check of this workbook, from which the next may keep what did not change. */
  readonly check: (read: ReadTables, asOf: number, previous: CheckRun | null) => CheckRun;
}

/** Who is told, in this order: began, read, checked, ended; or began, failed, ended. */
export interface WorkbookListener {
  readonly began: () => void;
  readonly read: (read: ReadTables, isWhole: boolean) => void;
  readonly checked: (findings: readonly Finding[]) => void;
  readonly failed: (problem: Problem) => void;
  readonly ended: () => void;
}

export interface WorkbookFollower {
  /** Reads the whole workbook again. */
  readonly readAgain: () => void;
  /** Reads those sheets again, without waiting for the host to tell of a change. */
  readonly readSheetsAgain: (sheetIds: readonly string[]) => void;
  /** Finds the tables of what was read last anew, with these choices. */
  readonly readAs: (choices: KeptChoices) => void;
  /** Checks what was read last, for another day. */
  readonly checkFor: (asOf: number) => void;
  readonly stop: () => void;
}

/**
 * Reads the workbook, checks it, and does so again after every change, one pass at a time.
 *
 * Changes that arrive during a pass are gathered and done in the next; only the sheets that changed are read.
 * A problem leaves what was read before as it is. `pause` lets the host breathe between the steps.
 */
export function followWorkbook(
  port: SheetPort,
  asOfAtStart: number,
  work: WorkOnWorkbook,
  listener: WorkbookListener,
  pause: () => Promise<void>,
): WorkbookFollower {
  let read: ReadTables | null = null;
  let checkRun: CheckRun | null = null;
  let asOf = asOfAtStart;
  let choices: KeptChoices = { columns: {}, kinds: {} };
  let choicesGiven = 0;
  let isWholeWanted = true;
  let isFindWanted = false;
  let isCheckWanted = false;
  let sheetsWanted = new Set<string>();
  let isRunning = false;
  let isStopped = false;

  const isWorkWaiting = (): boolean =>
    !isStopped && (isWholeWanted || isFindWanted || isCheckWanted || sheetsWanted.size > 0);

  async function run(): Promise<void> {
    if (isRunning || !isWorkWaiting()) return;
    isRunning = true;
    listener.began();
    try {
      while (isWorkWaiting()) await pass();
    } finally {
      // Even after a fault in a pass the next change must be followed.
      isRunning = false;
      if (!isStopped) listener.ended();
    }
  }

  async function pass(): Promise<void> {
    const before = read;
    const isWhole = isWholeWanted || (before === null && sheetsWanted.size > 0);
    const sheetIds = [...sheetsWanted];
    const isFind = isFindWanted;
    isWholeWanted = false;
    isFindWanted = false;
    sheetsWanted = new Set();

    if (isWhole) await readChoices();
    if (isWhole || sheetIds.length > 0 || (isFind && before !== null)) {
      const workbook =
        isWhole || before === null ? await port.readWorkbook() : await readSheets(before.workbook, sheetIds);
      if (isStopped) return;
      if (!workbook.ok) {
        listener.failed(workbook.problem);
        return;
      }
      await pause();
      read = { workbook: workbook.value, ...work.findTables(workbook.value, choices) };
      if (isStopped) return;
      listener.read(read, isWhole);
      await pause();
    }
    // Hearing what was read may have changed the day; the check that follows is for that day already.
    isCheckWanted = false;
    if (read === null || isStopped) return;
    const run = work.check(read, asOf, checkRun);
    checkRun = run;
    // Thousands of findings take whoever hears of them a while, too.
    await pause();
    if (isStopped) return;
    listener.checked(run.findings);
    await pause();
  }

  async function readChoices(): Promise<void> {
    const given = choicesGiven;
    const kept = await work.readChoices();
    // What was chosen while the older ones were being read is newer.
    if (kept !== null && given === choicesGiven) choices = kept;
  }

  async function readSheets(
    workbook: WorkbookSnapshot,
    sheetIds: readonly string[],
  ): Promise<Outcome<WorkbookSnapshot>> {
    const isKnown = new Set(workbook.sheets.map((sheet) => sheet.sheetId));
    const outcomes = await Promise.all(sheetIds.filter((id) => isKnown.has(id)).map((id) => port.readSheet(id)));
    const sheets = outcomes.flatMap((outcome) => (outcome.ok ? [outcome.value] : []));
    // A sheet that is new, or cannot be read since it was deleted meanwhile, changes the workbook as a whole.
    if (sheets.length < sheetIds.length) return port.readWorkbook();
    return succeed(replaceSheets(workbook, sheets));
  }

  const unsubscribe = port.onChange((changes) => {
    for (const change of changes) {
      if (change.sheetsChanged) isWholeWanted = true;
      else sheetsWanted.add(change.sheetId);
    }
    void run();
  });
  void run();

  return {
    readAgain: () => {
      isWholeWanted = true;
      void run();
    },
    readSheetsAgain: (sheetIds) => {
      for (const sheetId of sheetIds) sheetsWanted.add(sheetId);
      void run();
    },
    readAs: (chosen) => {
      choices = chosen;
      choicesGiven += 1;
      isFindWanted = true;
      void run();
    },
    checkFor: (day) => {
      asOf = day;
      isCheckWanted = true;
      void run();
    },
    stop: () => {
      isStopped = true;
      unsubscribe();
    },
  };
}
