import { Button, Field, Input } from "@fluentui/react-components";
import { SearchRegular } from "@fluentui/react-icons";
import { useMemo, type RefObject } from "react";
import { sayCount } from "../sayCount";
import { findFunctions } from "./findFunctions";
import type { FunctionDoc } from "./FunctionDoc";
import { functionDocs } from "./functionDocs";
import { useFunctionsStyles } from "./useFunctionsStyles";

interface FunctionListProps {
  readonly question: string;
  readonly searchBox: RefObject<HTMLInputElement>;
  readonly onQuestion: (question: string) => void;
  readonly onChoose: (id: string) => void;
}

/** The functions by the question each answers; by family until something is asked. */
export function FunctionList({ question, searchBox, onQuestion, onChoose }: FunctionListProps) {
  const styles = useFunctionsStyles();
  const found = useMemo(() => findFunctions(functionDocs, question), [question]);
  const isAsked = question.trim() !== "";
  const families = isAsked ? [""] : [...new Set(found.map(({ family }) => family))];
  return (
    <>
      <Field label="What do you want to know?" hint="Such as: when is it due? what is late? how heavy is it?">
        <Input
          ref={searchBox}
          type="search"
          className={styles.control}
          contentBefore={<SearchRegular />}
          value={question}
          onChange={(_, { value }) => onQuestion(value)}
        />
      </Field>
      <p className={styles.lead} aria-live="polite">
        {found.length === 0
          ? "No function answers that; use other words, or clear the field to see all."
          : sayCount(found.length, "function", "functions")}
      </p>
      {families.map((family) => (
        <section key={family}>
          {family !== "" && <h2 className={styles.family}>{family}</h2>}
          <ul className={styles.list}>
            {found
              .filter((doc) => family === "" || doc.family === family)
              .map((doc) => (
                <FunctionItem key={doc.id} doc={doc} onChoose={onChoose} />
              ))}
          </ul>
        </section>
      ))}
    </>
  );
}

function FunctionItem({ doc, onChoose }: { readonly doc: FunctionDoc; readonly onChoose: (id: string) => void }) {
  const styles = useFunctionsStyles();
  return (
    <li className={styles.item}>
      <Button className={styles.itemButton} onClick={() => onChoose(doc.id)}>
        <span className={styles.question}>{doc.answers}</span>
        <span className={styles.name}>{`TACK.${doc.id}`}</span>
        <span className={styles.more}>{doc.summary}</span>
      </Button>
    </li>
  );
}
