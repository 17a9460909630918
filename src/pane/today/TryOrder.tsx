import { useState } from "react";
import { OrderTrial, type OrderTrialProps } from "./OrderTrial";
import { useTryOrderStyles } from "./useTryOrderStyles";

/** The offer to try another order; once opened, what was tried stays while it is closed. */
export function TryOrder(props: OrderTrialProps) {
  const styles = useTryOrderStyles();
  const [isSeen, setSeen] = useState(false);
  return (
    <details className={styles.root} onToggle={() => setSeen(true)}>
      <summary className={styles.summary}>Try another order</summary>
      {isSeen && <OrderTrial {...props} />}
    </details>
  );
}
