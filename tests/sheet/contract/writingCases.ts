import type { ContractCase } from "./contractCase";
import { same, must, refused, cellOf, formulaOf, read, edit, until } from "./contractSteps";

/** What a port promises about writing a step: all of it or nothing, and nothing unasked. */
export const writingCases: readonly ContractCase[] = [
  {
    title: "writes all the cells of a step, with their number formats, and answers what stood there",
    async run(port, probe) {
      const id = await probe.addSheet("Contract write");
      await probe.type(id, 0, 0, "5 Mar 2026 or so");
      const receipt = must(
        await port.write("Make it a date", [
          edit(id, 0, 0, "5 Mar 2026 or so", 46086, { numberFormat: "yyyy-mm-dd" }),
          edit(id, 1, 0, null, "tbc"),
          edit(id, 1, 1, null, true),
        ]),
        "writing",
      );
      const sheet = await read(port, id);
      same([cellOf(sheet, 0, 0), cellOf(sheet, 1, 0), cellOf(sheet, 1, 1)], [46086, "tbc", true], "the cells");
      same(await probe.formatOf(id, 0, 0), "yyyy-mm-dd", "the number format");
      same(receipt.label, "Make it a date", "the label");
      const values = receipt.prior.map((prior) => [prior.at.row, prior.at.column, prior.value]);
      same(
        values.sort(),
        [
          [0, 0, "5 Mar 2026 or so"],
          [1, 0, null],
          [1, 1, null],
        ],
        "what stood there",
      );
    },
  },
  {
    title: "writes text as text, even where the host would read it as a number, a date or a formula",
    async run(port, probe) {
      const id = await probe.addSheet("Contract literal");
      const texts = [
        "007",
        "2026-03-05",
        "5 Mar 2026",
        "=A1",
        "+44 20 7946 0000",
        "TRUE",
        "50%",
        "£1,250.00",
        "'quoted",
        "1/2",
      ];
      must(
        await port.write(
          "Fill",
          texts.map((text, row) => edit(id, row, 0, null, text)),
        ),
        "writing",
      );
      const sheet = await read(port, id);
      same(
        texts.map((_, row) => cellOf(sheet, row, 0)),
        texts,
        "the texts",
      );
      same(
        texts.map((_, row) => formulaOf(sheet, row, 0)),
        texts.map(() => null),
        "no formulas",
      );
    },
  },
  {
    title: "writes a number as a number into a cell that is formatted as text",
    async run(port, probe) {
      const id = await probe.addSheet("Contract text format");
      await probe.setFormat(id, 0, 0, "@");
      await probe.type(id, 0, 0, "'46086");
      must(await port.write("Make it a number", [edit(id, 0, 0, "46086", 46086)]), "writing");
      same(cellOf(await read(port, id), 0, 0), 46086, "the number");
    },
  },
  {
    title: "writes a formula that calculates",
    async run(port, probe) {
      const id = await probe.addSheet("Contract formula");
      await probe.type(id, 0, 0, 4);
      must(await port.write("Fill", [edit(id, 0, 1, null, null, { formula: "=A1*3" })]), "writing");
      await until("the formula is calculated", async () => cellOf(await read(port, id), 0, 1) === 12);
      same(formulaOf(await read(port, id), 0, 1), "=A1*3", "the formula");
    },
  },
  {
    title: "clears a cell when the value is null",
    async run(port, probe) {
      const id = await probe.addSheet("Contract clear");
      await probe.type(id, 0, 0, "x");
      await probe.type(id, 0, 1, "stays");
      must(await port.write("Clear", [edit(id, 0, 0, "x", null)]), "writing");
      const sheet = await read(port, id);
      same([cellOf(sheet, 0, 0), cellOf(sheet, 0, 1)], [null, "stays"], "the cells");
    },
  },
  {
    title: "writes nothing at all when one cell no longer holds what was expected, and names that cell",
    async run(port, probe) {
      const id = await probe.addSheet("Contract refuse");
      await probe.type(id, 0, 0, "a");
      await probe.type(id, 1, 1, "typed meanwhile");
      refused(await port.write("Fill", [edit(id, 0, 0, "a", "A"), edit(id, 1, 1, null, "B")]), "cells-changed", "B2");
      const sheet = await read(port, id);
      same([cellOf(sheet, 0, 0), cellOf(sheet, 1, 1)], ["a", "typed meanwhile"], "nothing was written");
    },
  },
  {
    title: "tells the number 1 from the text 1 and from TRUE when it compares",
    async run(port, probe) {
      const id = await probe.addSheet("Contract kinds");
      await probe.type(id, 0, 0, "'1");
      await probe.type(id, 0, 1, true);
      refused(await port.write("Fill", [edit(id, 0, 0, 1, 2)]), "cells-changed", "A1");
      refused(await port.write("Fill", [edit(id, 0, 1, 1, 2)]), "cells-changed", "B1");
    },
  },
  {
    title: "never overwrites a formula unasked, not even one that shows blank",
    async run(port, probe) {
      const id = await probe.addSheet("Contract keep formula");
      await probe.type(id, 0, 0, '=""');
      await probe.type(id, 0, 1, "=1+1");
      await until("the formulas are there", async () => cellOf(await read(port, id), 0, 1) === 2);
      refused(await port.write("Fill", [edit(id, 0, 0, null, 1)]), "cells-changed", "A1");
      refused(await port.write("Fill", [edit(id, 0, 1, 2, 3)]), "cells-changed", "B1");
      must(await port.write("Fill", [edit(id, 0, 1, 2, 3, { expectedFormula: "=1+1" })]), "writing, asked");
      same(cellOf(await read(port, id), 0, 1), 3, "the cell");
    },
  },
  {
    title: "refuses a step that names one cell twice",
    async run(port, probe) {
      const id = await probe.addSheet("Contract twice");
      refused(await port.write("Fill", [edit(id, 2, 2, null, 1), edit(id, 2, 2, null, 2)]), "cells-named-twice", "C3");
      same(cellOf(await read(port, id), 2, 2), null, "nothing was written");
    },
  },
  {
    title: "refuses a protected sheet by name and writes nothing on the others",
    needs: ["protectSheet"],
    async run(port, probe) {
      const open = await probe.addSheet("Contract open");
      const closed = await probe.addSheet("Contract protected");
      await probe.protectSheet?.(closed);
      same((await read(port, closed)).isProtected, true, "protected");
      const step = [edit(open, 0, 0, null, 1), edit(closed, 0, 0, null, 1)];
      refused(await port.write("Fill", step), "sheet-protected", "Contract protected");
      same(cellOf(await read(port, open), 0, 0), null, "nothing was written on the open sheet");
    },
  },
  {
    title: "refuses a cell inside a merged block, but not its first cell",
    needs: ["merge"],
    async run(port, probe) {
      const id = await probe.addSheet("Contract merged");
      await probe.type(id, 0, 0, "Job");
      await probe.merge?.(id, 0, 0, 1, 3);
      refused(await port.write("Fill", [edit(id, 0, 1, null, "lost")]), "cells-merged", "B1");
      must(await port.write("Fill", [edit(id, 0, 0, "Job", "Spring job")]), "writing the first cell");
      same(cellOf(await read(port, id), 0, 0), "Spring job", "the first cell");
    },
  },
];
