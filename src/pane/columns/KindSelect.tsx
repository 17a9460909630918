import { Field, Select } from "@fluentui/react-components";
import { tableKinds } from "../../sheet/tableKinds";
import type { TableKind } from "../../sheet/tableKind";
import { kindName } from "./kindName";
import { useColumnsStyles } from "./useColumnsStyles";

/** Chooses what an area is read as, or that it is left out. */
export function KindSelect(props: {
  readonly label: string;
  /** null where it is read as nothing so far. */
  readonly kind: TableKind | null;
  /** Whether it was chosen by hand and may be guessed again. */
  readonly isGiven: boolean;
  readonly isDisabled: boolean;
  /** A kind, null to leave it out, undefined to guess again. */
  readonly onChoose: (kind: TableKind | null | undefined) => void;
}) {
  const styles = useColumnsStyles();
  return (
    <Field label={props.label} hint={props.isGiven ? "Chosen by hand." : undefined}>
      <Select
        className={styles.control}
        value={props.kind ?? ""}
        disabled={props.isDisabled}
        onChange={(_, { value }) => {
          const kind = tableKinds.find((known) => known === value);
          if (kind !== undefined) props.onChoose(kind);
          if (value === "leave out") props.onChoose(null);
          if (value === "guess") props.onChoose(undefined);
        }}
      >
        {props.kind === null && <option value="">Not read</option>}
        {tableKinds.map((kind) => (
          <option key={kind} value={kind}>
            {kindName(kind)}
          </option>
        ))}
        {props.isGiven && <option value="guess">Whatever its headings say</option>}
        <option value="leave out">Leave it out: it is none of these</option>
      </Select>
    </Field>
  );
}
