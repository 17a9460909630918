import { CounterBadge } from "@fluentui/react-components";
import { useSplitFindings } from "./useSplitFindings";

/** How many findings are open, beside the word on the tab. */
export function OpenCount() {
  const count = useSplitFindings()?.open.length ?? 0;
  return (
    <>
      {" "}
      <CounterBadge count={count} overflowCount={999} appearance="filled" color="informative" size="small" />
    </>
  );
}
