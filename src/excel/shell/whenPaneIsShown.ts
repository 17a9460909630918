/**
 * Calls back once, when the pane is first seen.
 *
 * In a shared runtime the page is started by the first function that calculates, long before anybody opens the pane
 * (if anybody does). The host tells when it is opened (SharedRuntime 1.1); a page that was opened straight away, and a
 * host that says nothing, are seen by the page's own size.
 */
export function whenPaneIsShown(callback: () => void): void {
  let isShown = false;
  const observer = new ResizeObserver(lookForSize);
  function show(): void {
    if (isShown) return;
    isShown = true;
    observer.disconnect();
    document.removeEventListener("visibilitychange", lookForSize);
    callback();
  }
  function lookForSize(): void {
    const hasSize = window.innerWidth > 0 && window.innerHeight > 0;
    if (hasSize && document.visibilityState === "visible") show();
  }
  observer.observe(document.documentElement);
  document.addEventListener("visibilitychange", lookForSize);
  // Not every host has Office.addin; without it the page's size decides.
  Office.addin
    ?.onVisibilityModeChanged((message) => {
      if (message.visibilityMode === Office.VisibilityMode.taskpane) show();
    })
    .catch(() => undefined);
  lookForSize();
}
