import { Checkbox, Field, Input, Select } from "@fluentui/react-components";
import type { Dispatch } from "react";
import type { ReadTables } from "../state/ReadTables";
import type { DayLooks } from "../today/DayLooks";
import { sayDay } from "../sayDay";
import { documentKinds, type DocumentKind } from "./documents/documentKinds";
import { lenderChoices } from "./documents/lenderChoices";
import type { HandOverAction } from "./HandOverAction";
import type { HandOverState } from "./HandOverState";
import { PicturePicker } from "./PicturePicker";
import { useHandOverStyles } from "./useHandOverStyles";

interface DocumentChoicesProps {
  readonly kind: DocumentKind;
  readonly chosen: HandOverState;
  readonly read: ReadTables;
  readonly looks: DayLooks | null;
  readonly picturesOnSheets: { readonly shown: readonly unknown[]; readonly isReading: boolean };
  readonly bagComplaint: string | null;
  readonly dispatch: Dispatch<HandOverAction>;
}

/** What is handed over, for whom, for which day and on which paper. */
export function DocumentChoices({
  kind,
  chosen,
  read,
  looks,
  picturesOnSheets,
  bagComplaint,
  dispatch,
}: DocumentChoicesProps) {
  const styles = useHandOverStyles();
  return (
    <div className={styles.choices}>
      <Field label="What to hand over" hint={kind.about}>
        <Select
          className={styles.control}
          value={kind.id}
          onChange={(_, { value }) => dispatch({ type: "kind chosen", kindId: value })}
        >
          {documentKinds.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </Select>
      </Field>
      {kind.asksFor.includes("lender") && (
        <Field label="Lender">
          <Select
            className={styles.control}
            value={chosen.lenderKey ?? ""}
            onChange={(_, { value }) => dispatch({ type: "lender chosen", lenderKey: value === "" ? null : value })}
          >
            <option value="">Every lender</option>
            {lenderChoices(read).map(({ key, name }) => (
              <option key={key} value={key}>
                {name}
              </option>
            ))}
          </Select>
        </Field>
      )}
      {kind.asksFor.includes("day") && looks !== null && looks.days.length > 1 && (
        <Field label="Day of the looks">
          <Select
            className={styles.control}
            value={String(looks.day ?? "")}
            onChange={(_, { value }) => dispatch({ type: "day chosen", day: Number(value) })}
          >
            {looks.days.map((day) => (
              <option key={day} value={day}>
                {sayDay(day)}
              </option>
            ))}
          </Select>
        </Field>
      )}
      {kind.asksFor.includes("bag limit") && (
        <Field
          label="What one bag may weigh at most"
          hint="Counts where the sheet has no bags of its own. No limit makes a bag safe to lift for everybody."
          validationState={bagComplaint === null ? "none" : "error"}
          validationMessage={bagComplaint ?? undefined}
        >
          <Input
            className={styles.control}
            value={chosen.bagLimitTyped}
            onChange={(_, { value }) => dispatch({ type: "bag limit typed", typed: value })}
          />
        </Field>
      )}
      {kind.sheetPictures === "asked" && (
        <Checkbox
          label="With pictures of the pieces"
          checked={chosen.isPictured}
          onChange={(_, { checked }) => dispatch({ type: "pictures wished", isPictured: checked === true })}
        />
      )}
      {kind.asksFor.includes("pictures") && (kind.sheetPictures !== "asked" || chosen.isPictured) && (
        <PicturePicker
          pictures={chosen.pictures}
          unreadFiles={chosen.unreadFiles}
          named={kind.sheetPictures === "asked" ? "a piece, such as P014.jpg," : "a look, such as look 7.jpg,"}
          picturesOnSheets={picturesOnSheets}
          onAdded={(pictures, unreadFiles) => dispatch({ type: "pictures added", pictures, unreadFiles })}
          onCleared={() => dispatch({ type: "pictures cleared" })}
        />
      )}
      <Field label="Paper">
        <Select
          className={styles.control}
          value={chosen.paperSize}
          onChange={(_, { value }) =>
            dispatch({ type: "paper chosen", paperSize: value === "Letter" ? "Letter" : "A4" })
          }
        >
          <option value="A4">A4</option>
          <option value="Letter">Letter</option>
        </Select>
      </Field>
    </div>
  );
}
