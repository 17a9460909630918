import { element } from "./element";

/** Where the grid takes keys, whether a cell is being edited or not. */
const GRID_KEYS = "#__editor___INTERNAL_EDITOR__DOCS_NORMAL";

/**
 * F6 goes from the header to the grid to the pane and round again, Shift+F6 the other way, as in Excel. The grid keeps
 * Tab for itself, so that without this no key would lead out of it.
 */
export function moveBetweenRegions(): void {
  addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "F6") return;
      event.preventDefault();
      event.stopPropagation();
      const regions = [document.querySelector<HTMLElement>(".bar"), element("grid"), element("pane")].filter(
        (region): region is HTMLElement => region !== null && !region.hidden,
      );
      const at = regions.findIndex((region) => region.contains(document.activeElement));
      const step = event.shiftKey ? -1 : 1;
      const next = regions[(Math.max(at, 0) + step + regions.length) % regions.length];
      if (next !== undefined) focusIn(next);
    },
    true,
  );
}

function focusIn(region: HTMLElement): void {
  if (region.id === "grid") return document.querySelector<HTMLElement>(GRID_KEYS)?.focus();
  region.querySelector<HTMLElement>("button:not([tabindex='-1']), [tabindex='0'], input, a[href]")?.focus();
}
