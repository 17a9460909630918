import { element } from "./element";

/** Lets the user open a file by the button or by dropping it on the page. */
export function chooseFile(open: (file: File) => Promise<void>): void {
  const input = element<HTMLInputElement>("file");
  element("open").addEventListener("click", () => input.click());
  input.addEventListener("change", () => {
    const file = input.files?.[0];
    // Cleared, so that choosing the same file again counts as a choice.
    input.value = "";
    if (file !== undefined) void open(file);
  });
  const carriesFile = (event: DragEvent) => event.dataTransfer?.types.includes("Files") === true;
  addEventListener("dragover", (event) => {
    if (!carriesFile(event)) return;
    event.preventDefault();
    document.body.classList.add("dropping");
  });
  addEventListener("dragleave", (event) => {
    if (event.relatedTarget === null) document.body.classList.remove("dropping");
  });
  addEventListener(
    "drop",
    (event) => {
      if (!carriesFile(event)) return;
      event.preventDefault();
      event.stopPropagation();
      document.body.classList.remove("dropping");
      const file = event.dataTransfer?.files[0];
      if (file !== undefined) void open(file);
    },
    true,
  );
}
