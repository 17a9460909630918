import { useMemo } from "react";
import type { AreaKind } from "../../sheet/areaKinds";
import type { KindColumnChoice } from "../../sheet/columnChoices";
import type { KeptChoices } from "../../sheet/keptChoices";
import { parseKeptChoices } from "../../sheet/parseKeptChoices";
import { usePane } from "../frame/usePane";
import { columnsKey } from "./columnsKey";

/** The choices that the workbook keeps, and how to change them. */
export interface KeptChoicesInHand extends KeptChoices {
  /** Kept choices that cannot be read. */
  readonly unreadable: number;
  /** False until they have been read once; before that nothing may be kept over them. */
  readonly isRead: boolean;
  readonly keepColumns: (sheetName: string, choices: readonly KindColumnChoice[]) => Promise<boolean>;
  readonly keepKinds: (sheetName: string, choices: readonly AreaKind[]) => Promise<boolean>;
  readonly keep: (choices: KeptChoices) => Promise<boolean>;
}

export function useKeptChoices(): KeptChoicesInHand {
  const { state, actions } = usePane();
  const text = state.kept[columnsKey];
  return useMemo(() => {
    const { columns, kinds, unreadable } = parseKeptChoices(text ?? null);
    const keep = (choices: KeptChoices): Promise<boolean> => actions.keep(columnsKey, JSON.stringify(choices));
    return {
      columns,
      kinds,
      unreadable,
      isRead: text !== undefined,
      keep,
      keepColumns: (sheetName, choices) => keep({ columns: withList(columns, sheetName, choices), kinds }),
      keepKinds: (sheetName, choices) => keep({ columns, kinds: withList(kinds, sheetName, choices) }),
    };
  }, [text, actions]);
}

function withList<T>(
  lists: Readonly<Record<string, readonly T[]>>,
  name: string,
  list: readonly T[],
): Readonly<Record<string, readonly T[]>> {
  const others = Object.entries(lists).filter(([other]) => other !== name);
  return Object.fromEntries(list.length === 0 ? others : [...others, [name, list]]);
}
