import { announceNumbers } from "./announceNumbers";
import { keepFunctions } from "./keepFunctions";
import { whenPaneIsShown } from "./whenPaneIsShown";

/**
 * The first script of the add-in's one page. It stays small, since the page starts whenever a function calculates; the
 * pane and all it needs are loaded only when somebody opens it.
 */
announceNumbers();
const functions = keepFunctions();
void Promise.all([Office.onReady(), pageRead()]).then(() => whenPaneIsShown(openPane));

/** The host may be ready before the page's body has been read. */
function pageRead(): Promise<unknown> {
  if (document.readyState !== "loading") return Promise.resolve();
  return new Promise((resolve) => document.addEventListener("DOMContentLoaded", resolve, { once: true }));
}

function openPane(): void {
  const element = document.getElementById("pane");
  if (element === null) return;
  import(/* webpackChunkName: "pane" */ "../../pane/root").then(
    ({ showPane }) => {
      element.replaceChildren();
      showPane(element, functions);
    },
    () => {
      element.textContent = "The pane could not be loaded; close it, check the connection and open it again.";
    },
  );
}
