import { sayProblem } from "../../domain/wording";
import { sayTermsRead } from "../sayTermsRead";
import { termsExamples } from "./termsExamples";
import { useFunctionsStyles } from "./useFunctionsStyles";

/** What lenders write, and beside each what it is read as, worked out as the function does. */
export function TermsHelp() {
  const styles = useFunctionsStyles();
  return (
    <>
      <h3 className={styles.part}>How terms are read</h3>
      <dl>
        {termsExamples.map((written) => {
          const read = sayTermsRead(written, "terms");
          return (
            <div key={written}>
              <dt className={styles.term}>{written}</dt>
              <dd className={styles.meaning}>{read.ok ? `Read as: ${read.value}` : sayProblem(read.problem)}</dd>
            </div>
          );
        })}
      </dl>
    </>
  );
}
