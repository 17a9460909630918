import { pieceInTwoLooks } from "../../../src/checks/rules/pieceInTwoLooks";
import { day } from "../day";
import { testRule } from "../testRule";

const looks = [
  ["Look", "Talent", "Change", "Shooting"],
  [1, "Ana", 10, 30],
  [2, "Bo", 10, 30],
  [3, "Ana", 10, 30],
] as const;
const shoot = day("2026-03-10");

testRule(pieceInTwoLooks, {
  clean: [
    {
      title: "a piece in one look",
      tables: {
        pieces: [
          ["Piece", "Look"],
          ["P1", 1],
          ["P2", "2"],
        ],
        looks,
      },
    },
    {
      title: "a piece in two looks of one talent, who changes between them",
      tables: {
        pieces: [
          ["Piece", "Look"],
          ["P1", "1, 3"],
        ],
        looks,
      },
    },
    {
      title: "as many pieces as looks that overlap",
      tables: {
        pieces: [
          ["Piece", "Look", "Quantity"],
          ["P1", "1, 2", 2],
        ],
        looks,
      },
    },
    {
      title: "looks that list pieces of their own",
      tables: {
        pieces: [
          ["Piece", "Look"],
          ["P1", null],
          ["P2", 2],
        ],
        looks: [
          ["Look", "Talent", "Change", "Shooting", "Pieces"],
          [1, "Ana", 10, 30, "P1, scarf"],
          [2, "Bo", 10, 30, "P2, scarf"],
        ],
      },
    },
    {
      title: "looks on two days",
      tables: {
        pieces: [
          ["Piece", "Look"],
          ["P1", "1, 2"],
        ],
        looks: [
          ["Look", "Talent", "Change", "Shooting", "Date"],
          [1, "Ana", 10, 30, shoot],
          [2, "Bo", 10, 30, shoot + 1],
        ],
      },
    },
    {
      title: "a look that needs no change, shot right after the other",
      tables: {
        pieces: [
          ["Piece", "Look"],
          ["P1", "1, 2"],
        ],
        looks: [
          ["Look", "Talent", "Change", "Shooting", "Arrives"],
          [1, "Ana", 10, 30, null],
          [2, "Bo", 0, 30, 0.5],
        ],
      },
    },
    {
      title: "a cell of the looks that cannot be read, which another rule reports",
      tables: {
        pieces: [
          ["Piece", "Look"],
          ["P1", "1, 2"],
        ],
        looks: [
          ["Look", "Talent", "Change", "Shooting"],
          [1, "Ana", "long", 30],
          [2, "Bo", 10, 30],
        ],
      },
    },
  ],
  findings: [
    {
      title: "a piece that one look lists among its own pieces and that names another",
      tables: {
        pieces: [
          ["Piece", "Look"],
          ["P1", 1],
          ["P2", 2],
        ],
        looks: [
          ["Look", "Talent", "Change", "Shooting", "Pieces"],
          [1, "Ana", 10, 30, "P1"],
          [2, "Bo", 10, 30, "P1, P2"],
        ],
      },
      expect: [{ at: "pieces!B2", messageId: "overlap", data: { look: "1", other: "2" } }],
    },
    {
      title: "a look that is changed while the piece is still worn in another",
      // One dresser, one camera: look 1 is changed 09:00-09:10 and shot until 09:40; look 2 is changed from 09:10.
      tables: {
        pieces: [
          ["Piece", "Look"],
          ["P1", "1, 2"],
        ],
        looks,
        day: [["Call"], [9 / 24]],
      },
      expect: [
        { at: "pieces!B2", messageId: "overlap", data: { look: "1", until: "09:40", other: "2", from: "09:10" } },
      ],
    },
    {
      title: "two of three looks at once for two pieces: none too many; for one piece, the first that overlap",
      tables: {
        pieces: [
          ["Piece", "Look", "Quantity"],
          ["P1", "1-3", 2],
          ["P2", "1-3", 1],
        ],
        looks,
      },
      expect: [{ at: "pieces!B3", messageId: "overlap", data: { look: "1", other: "2" } }],
    },
  ],
});
