import type { ContractCase } from "./contractCase";
import { same, must, refused, cellOf, formulaOf, read, edit, until } from "./contractSteps";

/** What a port promises about putting a step back. */
export const restoringCases: readonly ContractCase[] = [
  {
    title: "puts a step back: values, texts, formulas, blanks and number formats",
    async run(port, probe) {
      const id = await probe.addSheet("Contract restore");
      await probe.setFormat(id, 0, 0, "@");
      await probe.type(id, 0, 0, "'03/04/26");
      await probe.type(id, 1, 0, "=1+1");
      await until("the formula is calculated", async () => cellOf(await read(port, id), 1, 0) === 2);
      const receipt = must(
        await port.write("Mend", [
          edit(id, 0, 0, "03/04/26", 46115, { numberFormat: "yyyy-mm-dd" }),
          edit(id, 1, 0, 2, 5, { expectedFormula: "=1+1" }),
          edit(id, 2, 0, null, null, { formula: "=A2*2" }),
          edit(id, 3, 0, null, "note"),
        ]),
        "writing",
      );
      must(await port.restore(receipt), "restoring");
      await until("the formula is calculated again", async () => cellOf(await read(port, id), 1, 0) === 2);
      const sheet = await read(port, id);
      same(
        [0, 1, 2, 3].map((row) => cellOf(sheet, row, 0)),
        ["03/04/26", 2, null, null],
        "the cells",
      );
      same(
        [0, 1, 2, 3].map((row) => formulaOf(sheet, row, 0)),
        [null, "=1+1", null, null],
        "the formulas",
      );
      same(await probe.formatOf(id, 0, 0), "@", "the number format");
    },
  },
  {
    title: "can put the putting back back",
    async run(port, probe) {
      const id = await probe.addSheet("Contract restore twice");
      await probe.type(id, 0, 0, "before");
      const receipt = must(await port.write("Mend", [edit(id, 0, 0, "before", "after")]), "writing");
      const back = must(await port.restore(receipt), "restoring");
      must(await port.restore(back), "restoring the restoring");
      same(cellOf(await read(port, id), 0, 0), "after", "the cell");
    },
  },
  {
    title: "does not restore over what somebody typed since, and names the cell",
    async run(port, probe) {
      const id = await probe.addSheet("Contract typed since");
      await probe.type(id, 0, 0, "before");
      await probe.type(id, 1, 0, "before too");
      const step = [edit(id, 0, 0, "before", "after"), edit(id, 1, 0, "before too", "after too")];
      const receipt = must(await port.write("Mend", step), "writing");
      await probe.type(id, 1, 0, "mine");
      refused(await port.restore(receipt), "cells-changed", "A2");
      const sheet = await read(port, id);
      same([cellOf(sheet, 0, 0), cellOf(sheet, 1, 0)], ["after", "mine"], "nothing was put back");
    },
  },
  {
    title: "restores a formula although its result was recalculated since",
    async run(port, probe) {
      const id = await probe.addSheet("Contract recalculated");
      await probe.type(id, 0, 0, 1);
      const receipt = must(await port.write("Fill", [edit(id, 0, 1, null, null, { formula: "=A1*2" })]), "writing");
      await probe.type(id, 0, 0, 50);
      await until("the formula is calculated", async () => cellOf(await read(port, id), 0, 1) === 100);
      must(await port.restore(receipt), "restoring");
      same([cellOf(await read(port, id), 0, 1), formulaOf(await read(port, id), 0, 1)], [null, null], "the cell");
    },
  },
  {
    title: "puts nothing back that the user has undone already, and names the cell",
    needs: ["undo"],
    async run(port, probe) {
      const id = await probe.addSheet("Contract undone");
      await probe.type(id, 0, 0, "before");
      const receipt = must(await port.write("Mend", [edit(id, 0, 0, "before", "after")]), "writing");
      await probe.undo?.();
      await until("the cell is as before", async () => cellOf(await read(port, id), 0, 0) === "before");
      refused(await port.restore(receipt), "cells-changed", "A1");
      same(cellOf(await read(port, id), 0, 0), "before", "the cell");
    },
  },
  {
    title: "undoes a whole step at once",
    needs: ["undo"],
    async run(port, probe) {
      const id = await probe.addSheet("Contract undo");
      await probe.type(id, 0, 0, "a");
      const step = [
        edit(id, 0, 0, "a", "A"),
        edit(id, 2, 0, null, 3, { numberFormat: "0.00" }),
        edit(id, 0, 2, null, "c"),
      ];
      must(await port.write("Fill", step), "writing");
      await probe.undo?.();
      await until("every cell is as before", async () => {
        const sheet = await read(port, id);
        return cellOf(sheet, 0, 0) === "a" && cellOf(sheet, 2, 0) === null && cellOf(sheet, 0, 2) === null;
      });
    },
  },
];
