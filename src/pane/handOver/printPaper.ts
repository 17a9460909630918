/** A frame that never answers is taken away after this. */
const KEPT_MILLISECONDS = 120_000;

/** Opens the host's print window for a page of HTML. Nothing in the page can run: the frame it stands in forbids it. */
export function printPaper(html: string): void {
  const frame = document.createElement("iframe");
  frame.setAttribute("sandbox", "allow-same-origin allow-modals");
  frame.setAttribute("aria-hidden", "true");
  frame.tabIndex = -1;
  frame.style.cssText = "position:fixed;width:0;height:0;border:0;visibility:hidden";
  frame.srcdoc = html;
  const remove = (): void => frame.remove();
  frame.addEventListener("load", () => {
    frame.contentWindow?.addEventListener("afterprint", () => setTimeout(remove, 0));
    frame.contentWindow?.print();
  });
  document.body.append(frame);
  setTimeout(remove, KEPT_MILLISECONDS);
}
