import { installFunctionHost } from "../../src/bench/functions/installFunctionHost";
import { carried } from "../../src/functions/bindings/carried";
import { due } from "../../src/functions/bindings/due";
import { laterows } from "../../src/functions/bindings/laterows";
import { valueout } from "../../src/functions/bindings/valueout";
import { mountPane } from "../../src/pane/mountPane";
import { fakePort } from "../pane/fakePort";
import type { FakePort, FakeSheet } from "../pane/fakePort";

/** What a test holds the page by: the pane over a workbook it wrote down, and the port behind it. */
export interface PanePage {
  /** `isBare` leaves out the functions, as a page that does not hold them. */
  showPane(sheets: readonly FakeSheet[], today: number, isBare?: boolean): void;
  port: FakePort;
}

installFunctionHost();
const functions: Readonly<Record<string, (...args: never[]) => unknown>> = {
  CARRIED: carried,
  DUE: due,
  LATEROWS: laterows,
  VALUEOUT: valueout,
};
const callFunction = (id: string, args: readonly unknown[]) => functions[id]?.(...(args as never[]));

Object.assign(globalThis, {
  showPane(sheets: readonly FakeSheet[], today: number, isBare = false) {
    const port = fakePort(sheets);
    Object.assign(globalThis, { port });
    const element = document.getElementById("pane");
    if (element !== null)
      mountPane(element, { port, today: () => today, now: () => 10.5 / 24, ...(!isBare && { callFunction }) });
  },
});
