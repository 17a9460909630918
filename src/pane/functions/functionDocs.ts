import { functions } from "../../../shared/function-docs.json";
import type { FunctionDoc } from "./FunctionDoc";

/** Every worksheet function, by its id's alphabet. */
export const functionDocs: readonly FunctionDoc[] = functions;
