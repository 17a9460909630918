import type { Cell } from "../../src/sheet/cell";
import { day } from "./day";
import type { Sample } from "./workbookOf";

/** A small job in good order on 2026-03-05: nothing in it is a finding. Invented people and firms. */
export const tidyWorkbook: Sample = {
  tables: {
    pieces: [
      "Piece|Description|Kind|Lender|Quantity|Value|Currency|Weight|Out|Due|Terms|Shoot|Back|Quantity back|Look|Talent|Settled|Note".split("|"),
      ["P1", "Silk slip", "dress", "Maison Orla", 1, 900, "GBP", 0.4, d("2026-03-03"), d("2026-03-17"), "2 weeks", d("2026-03-10"), null, null, 1, "Ana", null, null],
      ["P2", "Court shoe", "shoes", "Maison Orla", 1, 450, "GBP", 0.9, d("2026-03-03"), d("2026-03-17"), "2 weeks", d("2026-03-10"), null, null, "1", "Ana", null, null],
      ["P3", "Pea coat", "coat", "Corbel House", 1, 1200, "GBP", "2.1 kg", d("2026-03-04"), d("2026-03-13"), null, d("2026-03-10"), null, null, 2, "Bo", null, null],
      ["P4", "Derby", "shoes", "Corbel House", 1, 380, "GBP", 1.1, d("2026-03-04"), d("2026-03-13"), null, d("2026-03-10"), null, null, 2, "Bo", null, null],
      ["P5", "Socks", "hosiery", "Corbel House", 3, 12, "GBP", 0.1, d("2026-03-02"), d("2026-03-04"), null, null, d("2026-03-04"), 3, null, null, null, null],
      ["P6", "Belt", "belt", "Quillery", 1, null, null, null, null, "tbc", "tbc", null, null, null, "spare", null, null, "waiting"],
    ],
    lenders: [
      ["Lender", "Kind", "Closed weekdays", "Terms", "Courier days", "Open", "Close"],
      ["Maison Orla", "Press office", "Sat, Sun", "2 weeks", 1, "10:00", "17:00"],
      ["Corbel House", "Showroom", null, null, null, "10-13, 14-18", null],
      ["Quillery", "Private", "by appointment", null, 2, null, null],
    ],
    looks: [
      ["Look", "Order", "Talent", "Change", "Shooting", "After", "Date"],
      [1, 1, "Ana", 10, 30, null, d("2026-03-10")],
      [2, 2, "Bo", "15 min", 25, "1", d("2026-03-10")],
    ],
    day: [["Date", "Call", "Dressers", "Chairs"], [d("2026-03-10"), 0.375, 1, 1]],
    requests: [["Lender", "Asked", "Needed by", "Answered"], ["Maison Orla", d("2026-02-23"), d("2026-03-03"), d("2026-02-24")]],
    receipts: [["Shop", "Bought", "Amount", "Currency", "Terms", "Refunded", "Amount refunded"], ["Kessel", d("2026-03-01"), 95, "GBP", "28 days from receipt", d("2026-03-04"), 40]],
  },
  formulas: { "pieces!J2": "=TACK.DUE([@Out],[@Terms])" },
};

function d(iso: string): Cell {
  return day(iso);
}
