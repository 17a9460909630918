import { refunds } from "../../../src/functions/bindings/refunds";
import { HostError } from "../HostError";
import { sayResult } from "../sayResult";
import { standInHost } from "../standInHost";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost("Double")));
afterAll(() => takeAway());

const DAY = 46083;

test("reads a sheet as typed in a hurry, in another language", () => {
  const rows = [
    ["Boutique", "Date d'achat", "Montant", "Gardé", "Délai de remboursement", "Remboursé", "Montant remboursé"],
    ["Kessel", "2 mars 2026", "1.250,00 €", "oui", "30 jours", "", ""],
    ["Odeon", DAY, "90,50 €", "", "14 jours", "", ""],
    ["", "", "", "", "", "", ""],
    ["Halle", DAY, 40, "10", "1 mois", "", 5],
    ["Total", "", 1380.5, "", "", "", ""],
  ];
  expect(sayResult(refunds(rows, DAY + 1))).toEqual([
    ["Shop", "Refund by", "Days left", "To come back"],
    ["Odeon", "2026-03-16", 13, 90.5],
    ["Halle", "2026-04-02", 30, 25],
  ]);
});

test("a cell that cannot be read leaves its error where it spoils a figure, and the row is listed", () => {
  const rows = [
    ["Shop", "Bought", "Amount", "Kept", "Terms"],
    ["Kessel", "03/04/26", 40, "", "28 days"],
    ["Odeon", DAY, -40, "", "28 days"],
    ["Halle", DAY, 40, "the belt", "no idea"],
  ];
  const [, first, second, third] = refunds(rows, DAY) as unknown[][];
  const said = (cell: unknown) => (cell instanceof HostError ? cell.message : sayResult(cell));
  expect(first!.map(said)).toEqual(["Odeon", "2026-03-30", 28, expect.stringContaining("Amount, row 3")]);
  expect(second!.map(said).slice(1, 3)).toEqual(Array(2).fill(expect.stringContaining("Bought, row 2")));
  expect(third!.map(said)[3]).toContain("Kept, row 4");
});
