import type { FakeSheet } from "../../fakePort";

/** Thursday 2026-03-05. */
export const DAY = 46086;

/** A small job: two lenders, pieces out, back and in part back, two looks, a call, and requests still to be asked. */
export const jobSheets: readonly FakeSheet[] = [
  {
    name: "Loans",
    rows: [
      [
        "Piece",
        "Description",
        "Kind",
        "Lender",
        "Slip",
        "Quantity",
        "Value",
        "Currency",
        "Weight",
        "Out",
        "Due",
        "Back",
        "Quantity back",
        "Condition out",
        "Look",
        "Talent",
      ],
      [
        "1",
        "wool coat",
        "coat",
        "Ado & Fils",
        "AF-1",
        1,
        1250,
        "GBP",
        2,
        DAY - 9,
        DAY + 1,
        null,
        null,
        "good",
        1,
        "Mina",
      ],
      [
        "2",
        "silk slip",
        "dress",
        "ado  & fils",
        "AF-1",
        1,
        400,
        "GBP",
        0.3,
        DAY - 9,
        DAY + 1,
        DAY,
        null,
        "good",
        1,
        "Mina",
      ],
      ["3", "felt hat", "hat", "Maison Orla", "", 3, 90, "EUR", 0.2, DAY - 9, DAY + 4, DAY - 1, 1, "", 2, "Teo"],
      ["4", "brogues", "shoes", "Maison Orla", "", 1, 310, "EUR", 1.1, DAY - 9, DAY - 2, DAY - 1, null, "", 2, "Teo"],
      ["5", "scarf for Mina", "scarf", "Maison Orla", "", 1, null, "", 0.1, DAY - 9, null, null, null, "", null, null],
    ],
  },
  {
    name: "Lenders",
    rows: [
      ["Lender", "Contact", "Address", "Terms", "Courier days"],
      ["Ado & Fils", "Ines <ines@ado.example>", "3 Ropewalk; yard", "7 days", 1],
      ["Maison Orla", "front desk", "8 Lantern Row", "5 working days", null],
    ],
  },
  {
    name: "Looks",
    rows: [
      ["Look", "Order", "Date", "Talent", "Set", "Where", "Change", "Hair and make-up", "Shooting", "Photo"],
      [1, 2, DAY, "Mina", "Slipway", "outdoors", 15, 20, 30, "mina-final.png"],
      [2, 1, DAY, "Teo", "Net loft", "indoors", 10, 10, 25, null],
    ],
  },
  {
    name: "Day",
    rows: [
      ["Date", DAY],
      ["Call", "08:00"],
      ["Wrap", "18:00"],
      ["Stylist", "Runa Vale"],
    ],
  },
  {
    name: "Requests",
    rows: [
      ["Lender", "Asked", "Wanted", "Needed by", "Answer", "Collect"],
      ["Ado & Fils", null, "a camel coat", DAY - 1, null, "Monday from 10"],
      ["Maison Orla", DAY - 5, "a hat", DAY - 1, "yes", null],
      ["ado & fils", null, "grey boots, 39", null, null, null],
      ["Wren Archive", null, "gloves", DAY, null, null],
    ],
  },
];
