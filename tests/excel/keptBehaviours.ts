import { answered } from "./answered";
import type { Model } from "./excelModels";
import { type FakeWorkbook, type FakeXmlPart, hostError } from "./fakeWorkbook";

/** A custom XML part is refused unless it is one element with balanced tags, as the real one refuses it. */
function needWellFormed(xml: string): void {
  const open: string[] = [];
  let roots = 0;
  const rest = xml
    .replace(/^<\?xml[^?]*\?>\s*/, "")
    .replace(/<(\/?)(\w+)((?:\s+\w+="[^"<&]*(?:&#?\w+;[^"<&]*)*")*)\s*(\/?)>/g, (_, end, name, __, closed) => {
      if (end === "" && open.length === 0) roots += 1;
      if (end === "" && closed === "") open.push(String(name));
      if (end !== "" && open.pop() !== name) roots = NaN;
      return "";
    })
    .replace(/&#?\w+;/g, "");
  if (roots !== 1 || open.length > 0 || /[<&]/.test(rest)) {
    throw hostError("InvalidArgument", "The argument is invalid or missing or has an incorrect format.");
  }
}

function namespaceOf(xml: string): string | undefined {
  return /<\w+\s[^>]*?xmlns="([^"]*)"/.exec(xml)?.[1];
}

/** What the strict fake lends: how an object is made, how a command waits for the sync, what stands behind an object. */
interface LentParts<State extends { readonly run: unknown }> {
  readonly workbook: FakeWorkbook;
  readonly proxied: (kind: string, run: State["run"], resolve: () => Model | null) => unknown;
  readonly queue: (state: State, command: () => void) => void;
  readonly model: (state: State) => Model;
}

type Behaviours<State> = Record<string, Record<string, (state: State, args: unknown[]) => unknown>>;

/** Custom XML parts as the object model has them. */
export function keptBehaviours<State extends { readonly run: unknown }>(parts: LentParts<State>): Behaviours<State> {
  const { workbook, proxied, queue, model } = parts;
  const partOf = (state: State) => model(state) as unknown as FakeXmlPart;
  let made = 0;
  const add = (xml: string): FakeXmlPart => {
    needWellFormed(xml);
    const part = { id: `{part-${++made}-${workbook.customXmlParts.length}}`, xml };
    workbook.customXmlParts.push(part);
    return part;
  };
  return {
    CustomXmlPartCollection: {
      getByNamespace: ({ run }, [namespace]) =>
        proxied("CustomXmlPartScopedCollection", run, () => ({
          items: () => partsIn(workbook, String(namespace)),
        })),
      add: (state, [xml]) => {
        let part: FakeXmlPart | null = null;
        queue(state, () => (part = add(String(xml))));
        return proxied("CustomXmlPart", state.run, () => part as Model | null);
      },
    },
    CustomXmlPart: {
      getXml: (state) =>
        answered(
          (command) => queue(state, command),
          () => partOf(state).xml,
        ),
      setXml: (state, [xml]) =>
        queue(state, () => {
          needWellFormed(String(xml));
          partOf(state).xml = String(xml);
        }),
      delete: (state) =>
        queue(state, () => {
          const { id } = partOf(state);
          workbook.customXmlParts = workbook.customXmlParts.filter((part) => part.id !== id);
        }),
    },
  };
}

function partsIn({ customXmlParts }: FakeWorkbook, namespace: string): Model[] {
  return customXmlParts.filter(({ xml }) => namespaceOf(xml) === namespace) as unknown as Model[];
}
