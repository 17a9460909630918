import { announceNumbers } from "./announceNumbers";
import { whenPaneIsShown } from "./whenPaneIsShown";

/**
 * The first script of the add-in's one page. It stays small, since the page starts whenever a function calculates; the
 * pane and all it needs are loaded only when somebody opens it.
 */
announceNumbers();
void Office.onReady(() => {
  whenPaneIsShown(() => {
    const element = document.getElementById("pane");
    if (element === null) return;
    import(/* webpackChunkName: "pane" */ "../../pane/root").then(
      ({ showPane }) => {
        element.replaceChildren();
        showPane(element);
      },
      () => {
        element.textContent = "The pane could not be loaded; close it, check the connection and open it again.";
      },
    );
  });
});
