import { Button } from "@fluentui/react-components";
import { memo } from "react";
import type { Dispatch } from "react";
import type { CheckAction } from "./CheckAction";
import { useCheckStyles } from "./useCheckStyles";

interface GroupButtonProps {
  readonly type: "preview opened" | "more shown";
  readonly groupId: string;
  /** How many findings the group shows afterwards, where more are asked for. */
  readonly shown?: number;
  readonly dispatch: Dispatch<CheckAction>;
  readonly children: string;
}

/** A button within a group, drawn again only when its words change. */
export const GroupButton = memo(function GroupButton({
  type,
  groupId,
  shown = 0,
  dispatch,
  children,
}: GroupButtonProps) {
  const styles = useCheckStyles();
  return (
    <Button
      size="small"
      className={styles.action}
      onClick={() => dispatch(type === "more shown" ? { type, groupId, shown } : { type, groupId })}
    >
      {children}
    </Button>
  );
});
