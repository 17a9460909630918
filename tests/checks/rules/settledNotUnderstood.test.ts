import { settledNotUnderstood } from "../../../src/checks/rules/settledNotUnderstood";
import { day } from "../day";
import { testRule } from "../testRule";

const rows = (...settled: readonly (string | number | boolean | null)[]) => ({
  pieces: [["Piece", "Settled"], ...settled.map((cell, place) => [`P${place + 1}`, cell])],
});

testRule(settledNotUnderstood, {
  clean: [
    { title: "lost, bought and gifted", tables: rows("lost", "Bought by client", "GIFTED", "2 lost", "written off") },
    {
      title: "the same in other languages",
      tables: rows(
        "perdu",
        "acheté",
        "offert",
        "verloren",
        "gekauft",
        "verschenkt: Geschenk",
        "perso",
        "regalato",
        "vendido",
      ),
    },
    { title: "a tick or a day", tables: rows(true, "x", "yes", 1, day("2026-03-04"), "4 Mar 2026") },
    { title: "a no, or not known yet", tables: rows("no", "-", "tbc", "pending", "n/a", "", null, 0, false) },
  ],
  findings: [
    {
      title: "words that say something else, for they count all the same",
      tables: rows("see note", "ask Ana", "lost"),
      expect: [
        { at: "pieces!B2", messageId: "counts", data: { given: "see note" } },
        { at: "pieces!B3", messageId: "counts", data: { given: "ask Ana" } },
      ],
    },
  ],
});
