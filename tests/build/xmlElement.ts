/** An element of a manifest: enough of XML for a file without entities in names, CDATA or processing instructions inside. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlElement[];
  readonly text: string;
}

/** Reads the one root element of a document; throws where tags do not nest. */
export function readXml(source: string): XmlElement {
  const tokens = /<\?[^]*?\?>|<!--[^]*?-->|<(\/?)([\w.:-]+)((?:\s+[\w.:-]+="[^"<]*")*)\s*(\/?)>|([^<]+)/gy;
  const open: { name: string; attributes: Record<string, string>; children: XmlElement[]; text: string }[] = [];
  const top = { name: "", attributes: {}, children: [] as XmlElement[], text: "" };
  open.push(top);
  let end = 0;
  for (let match = tokens.exec(source); match !== null; match = tokens.exec(source)) {
    end = tokens.lastIndex;
    const [, closing, name, attributes = "", selfClosing, text] = match;
    const current = open.at(-1) ?? top;
    if (text !== undefined) current.text += text.trim();
    if (name === undefined) continue;
    if (closing === "/") {
      if (open.pop()?.name !== name) throw new Error(`</${name}> closes another element`);
      continue;
    }
    const pairs = [...attributes.matchAll(/([\w.:-]+)="([^"]*)"/g)].map(([, key = "", value = ""]) => [key, value]);
    const element = { name, attributes: Object.fromEntries(pairs), children: [], text: "" };
    current.children.push(element);
    if (selfClosing !== "/") open.push(element);
  }
  if (end !== source.length) throw new Error(`not understood: ${source.slice(end, end + 40)}`);
  const [root, ...others] = top.children;
  if (open.length !== 1 || root === undefined || others.length > 0) throw new Error("there is not one root element");
  return root;
}

/** Every element below and with this one. */
export function allElements(element: XmlElement): XmlElement[] {
  return [element, ...element.children.flatMap(allElements)];
}
