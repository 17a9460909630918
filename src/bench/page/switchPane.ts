import { element } from "./element";

/** Shows and hides the pane; the grid takes the room. */
export function switchPane(): void {
  const button = element("pane-switch");
  const pane = element("pane");
  button.addEventListener("click", () => {
    pane.hidden = !pane.hidden;
    button.setAttribute("aria-expanded", String(!pane.hidden));
  });
}
