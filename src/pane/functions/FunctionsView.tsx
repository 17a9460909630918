import { useRef, useState } from "react";
import { usePane } from "../frame/usePane";
import { FunctionForm } from "./FunctionForm";
import { FunctionList } from "./FunctionList";
import { functionDocs } from "./functionDocs";

/** Finds a function by what it answers, fills it and puts it into a cell. */
export function FunctionsView() {
  const { read } = usePane().state;
  const [question, setQuestion] = useState("");
  const [chosenId, setChosenId] = useState<string | null>(null);
  const searchBox = useRef<HTMLInputElement>(null);
  if (read === null) return null;
  const doc = functionDocs.find(({ id }) => id === chosenId);
  if (doc !== undefined) {
    const back = (): void => {
      setChosenId(null);
      // The field is there only after the list has been drawn.
      setTimeout(() => searchBox.current?.focus(), 0);
    };
    return <FunctionForm key={doc.id} doc={doc} read={read} onBack={back} />;
  }
  return <FunctionList question={question} searchBox={searchBox} onQuestion={setQuestion} onChoose={setChosenId} />;
}
