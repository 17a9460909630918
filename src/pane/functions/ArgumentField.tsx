import { Button, Field, Input, Select } from "@fluentui/react-components";
import type { ArgumentOption } from "./ArgumentOption";
import type { ParamDoc } from "./FunctionDoc";
import { useFunctionsStyles } from "./useFunctionsStyles";

interface ArgumentFieldProps {
  readonly param: ParamDoc;
  readonly text: string;
  /** What is wrong with it, or null. */
  readonly sentence: string | null;
  /** What its words are read as, or null. */
  readonly reading: string | null;
  readonly options: readonly ArgumentOption[];
  readonly onType: (text: string) => void;
  readonly onUseSelection: () => void;
}

/** One argument: typed, taken from what the workbook offers, or from the selected cells. */
export function ArgumentField({ param, text, sentence, reading, options, onType, onUseSelection }: ArgumentFieldProps) {
  const styles = useFunctionsStyles();
  const { name, optional, matrix } = param;
  const groups = [...new Set(options.map(({ group }) => group))];
  return (
    <div className={styles.argument}>
      <Field
        label={optional ? `${name} (may be left out)` : name}
        hint={param.text}
        validationState={sentence === null ? "none" : "error"}
        validationMessage={sentence ?? reading ?? undefined}
      >
        <Input
          className={styles.control}
          value={text}
          placeholder={matrix ? "=Table[#All] or =Sheet!A1:F20" : "a value, or = and a cell"}
          onChange={(_, { value }) => onType(value)}
        />
      </Field>
      <div className={styles.pick}>
        {options.length > 0 && (
          <Select
            className={styles.pickSelect}
            size="small"
            aria-label={`Take ${name} from the workbook`}
            value=""
            onChange={(_, { value }) => value !== "" && onType(value)}
          >
            <option value="">From the workbook…</option>
            {groups.map((group) => (
              <optgroup key={group} label={group}>
                {options
                  .filter((option) => option.group === group)
                  .map((option) => (
                    <option key={option.text} value={option.text}>
                      {option.label}
                    </option>
                  ))}
              </optgroup>
            ))}
          </Select>
        )}
        <Button
          size="small"
          className={styles.action}
          aria-label={`Use the selected ${matrix ? "cells" : "cell"} for ${name}`}
          onClick={onUseSelection}
        >
          {matrix ? "Use the selected cells" : "Use the selected cell"}
        </Button>
      </div>
    </div>
  );
}
