import type { Grid } from "../grid/createGrid";
import { element } from "./element";

/** Marks the grid while it calculates, for assistive technology and for whoever drives the page. */
export function sayWhenBusy({ api }: Grid): void {
  const mark = (busy: boolean) => element("grid").setAttribute("aria-busy", String(busy));
  api.getFormula().calculationStart(() => mark(true));
  api.getFormula().calculationEnd(() => mark(false));
}
