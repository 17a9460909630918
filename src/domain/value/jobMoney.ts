import { lastSerial } from "../dates/lastSerial";
import type { FieldValue } from "../fieldValue";
import { groupFinder } from "../groupFinder";
import { isProblem } from "../isProblem";
import { quantityHeld } from "../loans/quantityHeld";
import type { Problem } from "../problem";
import type { ColumnFormat, ResultCell, ResultTable } from "../resultTable";
import { amountFromTenThousandths } from "./amountFromTenThousandths";
import { receiptMoney } from "./receiptMoney";
import type { ReceiptRows } from "./receiptRows";
import type { RentalRow } from "./rentalRow";
import type { RentalRows } from "./rentalRows";
import { tenThousandths } from "./tenThousandths";

const FIGURES = ["Spent", "Kept", "Refunded", "To come back", "Rental", "Deposits held"];

/** What stands for the job of rows that name none. */
const NO_JOB = "(no job)";

/** One job's figures in one currency, in the order of FIGURES and in ten-thousandths, with the first problem that spoils each. */
interface Tally {
  job: FieldValue<string>;
  readonly currency: FieldValue<string>;
  readonly sums: Float64Array;
  readonly problems: (Problem | null)[];
  firstRow: number;
}

/**
 * The money of each job, over all receipts and rented pieces: one row for each job and currency, in the order first seen.
 *
 * Whatever is dated counts, whenever it is: what is spent, kept and refunded is as receiptMoney has it; a deposit is held
 * from the day a piece goes out until all of its row is back or it is settled. `nameKey` gives two spellings of
 * one job the same key. Rows that name no job come last.
 */
export function jobMoney(
  receipts: readonly ReceiptRows[],
  rentals: readonly RentalRows[],
  nameKey: (name: string) => string,
): ResultTable {
  const hasCurrencies = areApart([...receipts, ...rentals]);
  const tallyFor = groupFinder(nameKey, (job, currency): Tally => ({
    job,
    currency,
    sums: new Float64Array(FIGURES.length),
    problems: FIGURES.map(() => null),
    firstRow: Infinity,
  }));
  const tallyAt = ({ job, currency }: Pick<RentalRow, "job" | "currency">, row: number): Tally => {
    const tally = tallyFor(job, hasCurrencies ? currency : null);
    if (row < tally.firstRow) {
      // Receipts are gone through before rentals, wherever each stands; the job is named as the sheet first names it.
      tally.firstRow = row;
      tally.job = job;
    }
    return tally;
  };
  for (const rows of receipts) {
    for (let index = 0; index < rows.count; index++) {
      const receipt = rows.at(index);
      const { spent, kept, refunded, toComeBack } = receiptMoney(receipt, lastSerial);
      if (spent === 0 && kept === 0 && refunded === 0) continue;
      const tally = tallyAt(receipt, receipt.row);
      add(tally, 0, spent);
      add(tally, 1, kept);
      add(tally, 2, refunded);
      add(tally, 3, toComeBack);
    }
  }
  for (const rows of rentals) {
    for (let index = 0; index < rows.count; index++) {
      const rental = rows.at(index);
      if (rental.rentalFee === null && rental.deposit === null) continue;
      const tally = tallyAt(rental, rental.piece.row);
      add(tally, 4, moneyOf(rental.rentalFee));
      add(tally, 5, depositHeld(rental));
    }
  }
  const sorted = [...tallyFor.all].sort(
    (a, b) => Number(a.job === null) - Number(b.job === null) || a.firstRow - b.firstRow,
  );
  return {
    headings: ["Job", ...FIGURES, ...(hasCurrencies ? ["Currency"] : [])],
    formats: ["as is", ...FIGURES.map((): ColumnFormat => "money"), ...(hasCurrencies ? (["as is"] as const) : [])],
    rows: sorted.map(({ job, currency, sums, problems }): ResultCell[] => [
      job ?? NO_JOB,
      ...problems.map((problem, place) => problem ?? amountFromTenThousandths(sums[place]!)),
      ...(hasCurrencies ? [currency] : []),
    ]),
  };
}

function add({ sums, problems }: Tally, place: number, amount: number | Problem): void {
  if (typeof amount === "number") sums[place]! += amount;
  else problems[place] ??= amount;
}

/** Whether amounts must be kept apart: some table has currencies, or two tables have one each and not the same. */
function areApart(tables: readonly (ReceiptRows | RentalRows)[]): boolean {
  if (tables.some(({ hasCurrencies }) => hasCurrencies)) return true;
  const used = tables.map(({ count, at }) => (count > 0 ? at(0).currency : null));
  return new Set(used.filter((currency) => currency !== null)).size > 1;
}

function moneyOf(amount: FieldValue<number>): number | Problem {
  return isProblem(amount) ? amount : tenThousandths(amount ?? 0);
}

function depositHeld({ deposit, piece }: RentalRow): number | Problem {
  if (deposit === null) return 0;
  const held = quantityHeld(piece, lastSerial);
  if (held === 0) return 0;
  return isProblem(held) ? held : moneyOf(deposit);
}
