import { mountPane } from "../../src/pane/mountPane";
import { fakePort } from "../pane/fakePort";
import type { FakePort, FakeSheet } from "../pane/fakePort";

/** What a test holds the page by: the pane over a workbook it wrote down, and the port behind it. */
export interface PanePage {
  showPane(sheets: readonly FakeSheet[], today: number): void;
  port: FakePort;
}

Object.assign(globalThis, {
  showPane(sheets: readonly FakeSheet[], today: number) {
    const port = fakePort(sheets);
    Object.assign(globalThis, { port });
    const element = document.getElementById("pane");
    if (element !== null) mountPane(element, { port, today: () => today });
  },
});
