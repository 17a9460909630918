import { talentBeforePiece } from "../../../src/checks/rules/talentBeforePiece";
import { day } from "../day";
import { testRule } from "../testRule";

const shoot = day("2026-03-10");
const pieces = ["Piece", "Lender", "Look", "Out", "Shoot"];
const lenders = [
  ["Lender", "Open", "Close"],
  ["Velter", "10:00", "18:00"],
  ["Quillery", null, null],
  ["Orla", "14-18, 10-13", null],
] as const;
const looks = [
  ["Look", "Talent", "Change", "Shooting", "Arrives", "Date"],
  [1, "Ana", 20, 60, null, shoot],
  [2, "Bo", 20, 30, 10 / 24, shoot],
] as const;
const days = [
  ["Date", "Call"],
  [shoot, 9 / 24],
] as const;

testRule(talentBeforePiece, {
  clean: [
    {
      title: "a piece collected the day before",
      tables: { pieces: [pieces, ["P1", "Velter", 1, shoot - 1, null]], looks, lenders, day: days },
    },
    {
      title: "a look that is changed once the lender is open",
      tables: { pieces: [pieces, ["P1", "Velter", 2, shoot, null]], looks, lenders, day: days },
    },
    {
      title: "a lender whose hours are not known, or who is not listed",
      tables: {
        pieces: [pieces, ["P1", "Quillery", 1, shoot, null], ["P2", "Halden", 1, shoot, null]],
        looks,
        lenders,
        day: days,
      },
    },
    {
      title: "a day whose call nobody says",
      tables: { pieces: [pieces, ["P1", "Velter", 1, shoot, null]], looks, lenders },
    },
    {
      title: "a day that is past",
      asOf: shoot + 1,
      tables: { pieces: [pieces, ["P1", "Velter", 1, shoot, null]], looks, lenders, day: days },
    },
  ],
  findings: [
    {
      title: "a look that is changed at call, from a lender who opens an hour later",
      tables: { pieces: [pieces, ["P1", "Velter", 1, shoot, null]], looks, lenders, day: days },
      expect: [
        { at: "pieces!D2", messageId: "closed", data: { look: "1", from: "09:00", lender: "Velter", opens: "10:00" } },
      ],
    },
    {
      title: "the same where the talent's arrival alone says the hour, and the lender opens twice a day",
      tables: {
        pieces: [pieces, ["P1", "Orla", "Look 1", shoot, shoot]],
        looks: [looks[0], ["Look 1", "Ana", 20, 60, 9.5 / 24, null]],
        lenders,
      },
      expect: [{ at: "pieces!D2", messageId: "closed", data: { look: "1", from: "09:30", opens: "10:00" } }],
    },
  ],
});
