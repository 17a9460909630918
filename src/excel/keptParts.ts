import { keptNamespace } from "../sheet/keptNamespace";
import { readKeptXml } from "../sheet/readKeptXml";

export interface KeptParts {
  readonly parts: readonly Excel.CustomXmlPart[];
  readonly texts: Map<string, string>;
}

/**
 * The workbook's custom XML parts that keep our texts (ExcelApi 1.5), and the texts by key: one part, or none before the
 * first text; of more, which a workbook put together from several may have, the first holds good.
 */
export async function keptParts(context: Excel.RequestContext): Promise<KeptParts> {
  const parts = context.workbook.customXmlParts.getByNamespace(keptNamespace).load("items/id");
  await context.sync();
  const xmls = parts.items.map((part) => part.getXml());
  if (xmls.length > 0) await context.sync();
  const texts = xmls.reverse().flatMap(({ value }) => [...readKeptXml(value)]);
  return { parts: parts.items, texts: new Map(texts) };
}
