import type { SheetChange } from "../../../src/sheet/SheetPort";
import type { ContractCase } from "./contractCase";
import { same, must, edit, until } from "./contractSteps";

/** What a port promises about telling of changes. */
export const tellingCases: readonly ContractCase[] = [
  {
    title: "tells of what the user types, where",
    async run(port, probe) {
      const id = await probe.addSheet("Contract listen");
      await probe.type(id, 0, 0, 1);
      await new Promise((resolve) => setTimeout(resolve, 400));
      const heard: SheetChange[] = [];
      const stop = port.onChange((changes) => heard.push(...changes));
      await new Promise((resolve) => setTimeout(resolve, 50));
      await probe.type(id, 3, 1, "typed");
      const covers = (change: SheetChange): boolean =>
        change.sheetId === id &&
        (change.area === null ||
          (change.area.row <= 3 &&
            3 < change.area.row + change.area.rowCount &&
            change.area.column <= 1 &&
            1 < change.area.column + change.area.columnCount));
      await until("the edit is told", () => heard.some(covers));
      stop();
      await new Promise((resolve) => setTimeout(resolve, 400));
      const count = heard.length;
      await probe.type(id, 4, 1, "unheard");
      await new Promise((resolve) => setTimeout(resolve, 400));
      same(heard.length, count, "nothing is told after stopping");
    },
  },
  {
    title: "tells of a sheet that was added and of one that was deleted",
    async run(port, probe) {
      const heard: SheetChange[] = [];
      const stop = port.onChange((changes) => heard.push(...changes));
      await new Promise((resolve) => setTimeout(resolve, 50));
      const id = await probe.addSheet("Contract added");
      await until("the new sheet is told", () => heard.some((change) => change.sheetsChanged));
      await new Promise((resolve) => setTimeout(resolve, 400));
      heard.length = 0;
      await probe.deleteSheet(id);
      await until("the deleted sheet is told", () => heard.some((change) => change.sheetsChanged));
      stop();
    },
  },
  {
    title: "tells of a sheet that was renamed, and goes on writing to it",
    needs: ["renameSheet"],
    async run(port, probe) {
      const id = await probe.addSheet("Contract old name");
      await probe.type(id, 0, 0, "a");
      await new Promise((resolve) => setTimeout(resolve, 400));
      const heard: SheetChange[] = [];
      const stop = port.onChange((changes) => heard.push(...changes));
      await new Promise((resolve) => setTimeout(resolve, 50));
      await probe.renameSheet?.(id, "Contract new name");
      must(await port.write("Mend", [edit(id, 0, 0, "a", "b")]), "writing");
      await until("the new name is told", () => heard.some((change) => change.sheetsChanged));
      stop();
      const names = must(await port.readWorkbook(), "reading").sheets.map(({ name }) => name);
      same([names.includes("Contract old name"), names.includes("Contract new name")], [false, true], "the names");
    },
  },
  {
    title: "tells of a step it wrote itself, so that the check runs again",
    async run(port, probe) {
      const id = await probe.addSheet("Contract own");
      await new Promise((resolve) => setTimeout(resolve, 400));
      const heard: SheetChange[] = [];
      const stop = port.onChange((changes) => heard.push(...changes));
      await new Promise((resolve) => setTimeout(resolve, 50));
      must(await port.write("Fill", [edit(id, 0, 0, null, 1)]), "writing");
      await until("the step is told", () => heard.some((change) => change.sheetId === id));
      stop();
    },
  },
];
