import { functionDocs } from "../../src/build/functionDocs.mjs";
import { bindingNamed } from "./bindingNamed";
import { HostError } from "./HostError";
import { readFormula } from "./readFormula";
import { readLiteral } from "./readLiteral";
import { sayResult } from "./sayResult";
import { standInHost } from "./standInHost";

const examples = functionDocs().flatMap(({ id, examples: own }) =>
  own.map((example) => [example.formula, { id, ...example }] as const),
);

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost("Double")));
afterAll(() => takeAway());

/** As an example writes it: an array constant, a number or truth value, else the text itself, quoted or not. */
function expected(gives: string): unknown {
  if (/^\{.*\}$|^".*"$|^[-+]?\d+(?:\.\d+)?$|^TRUE$|^FALSE$/.test(gives)) return readLiteral(gives);
  return gives;
}

function call(formula: string, id: string): unknown {
  const read = readFormula(formula);
  if (read.id !== id) throw new Error(`The example of ${id} calls ${read.id}`);
  return bindingNamed(id.toLowerCase())(...read.args.map((arg) => arg ?? null));
}

describe("every documented example does what it says", () => {
  test.each(examples)("%s", (formula, { id, gives, fails }) => {
    if (gives !== null) {
      expect(sayResult(call(formula, id))).toEqual(expected(gives));
      return;
    }
    let thrown: unknown;
    try {
      call(formula, id);
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBeInstanceOf(HostError);
    expect(["#VALUE!", "#N/A"]).toContain((thrown as HostError).code);
    expect((thrown as HostError).message).toContain(fails);
  });
});
