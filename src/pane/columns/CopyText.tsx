import { Button, Field, Input } from "@fluentui/react-components";
import { useRef, useState } from "react";
import { useColumnsStyles } from "./useColumnsStyles";

/** A text to be copied; where the clipboard is closed to the pane it is selected, so that the keyboard can copy it. */
export function CopyText({
  label,
  hint,
  text,
}: {
  readonly label: string;
  readonly hint: string;
  readonly text: string;
}) {
  const styles = useColumnsStyles();
  const input = useRef<HTMLInputElement>(null);
  const [said, setSaid] = useState("");
  const copy = async (): Promise<void> => {
    input.current?.select();
    try {
      await navigator.clipboard.writeText(text);
      setSaid("Copied.");
    } catch {
      setSaid("It is selected; press Ctrl+C (Command+C on a Mac) to copy it.");
    }
  };
  return (
    <>
      <div className={styles.copy}>
        <Field className={styles.copyField} label={label} hint={hint}>
          <Input ref={input} className={styles.control} readOnly value={text} />
        </Field>
        <Button className={styles.action} onClick={() => void copy()}>
          Copy
        </Button>
      </div>
      <p aria-live="polite" className={styles.note}>
        {said}
      </p>
    </>
  );
}
