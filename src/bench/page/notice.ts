import { element } from "./element";

export interface NoticeAction {
  readonly label: string;
  readonly run: () => void;
}

/** Shows one sentence under the header until it is closed or another takes its place; null takes it away. */
export function notice(sentence: string | null, actions: readonly NoticeAction[] = []): void {
  const box = element("notice");
  box.hidden = sentence === null;
  element("notice-text").textContent = sentence ?? "";
  const close = { label: "Close", run: () => undefined };
  const buttons = [...actions, close].map(({ label, run }) => {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = label;
    button.addEventListener("click", () => {
      notice(null);
      run();
    });
    return button;
  });
  element("notice-actions").replaceChildren(...buttons);
}
