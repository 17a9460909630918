import { useFrameStyles } from "./useFrameStyles";

/** The usual caution, under every view. */
export function Foot() {
  const styles = useFrameStyles();
  return (
    <footer className={styles.foot}>
      These figures come from your sheet as it is typed. They are no insurance, legal, labour or medical advice: the
      policy, the lender&rsquo;s slip, local rules, a doctor&rsquo;s word and your crew&rsquo;s agreement come first.
      Lifting and carrying injure, and no weight shown here is thereby safe.
    </footer>
  );
}
