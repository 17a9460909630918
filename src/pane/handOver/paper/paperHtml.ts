import type { DocumentCell, DocumentTable } from "./DocumentTable";
import { escapeHtml } from "./escapeHtml";
import type { Paper, PaperBlock } from "./Paper";
import type { PaperSize } from "./PaperSize";
import { paperStyle } from "./paperStyle";
import { pictureSource } from "./pictureSource";

/** Nothing runs and nothing is fetched, whatever a cell may hold: only the page's own style and pictures count. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

const figures = new Intl.NumberFormat("en-GB", { maximumFractionDigits: 4 });

/** Dates, times and numbers of slips, which are not to be parted at their dashes. */
const SHORT = /^\S{1,12}$/;

/** A paper as one page of HTML that needs nothing beside itself; every text in it is escaped. */
export function paperHtml(paper: Paper, size: PaperSize): string {
  const pages = paper.pages.map(
    ({ title, blocks }) => `<section><h1>${escapeHtml(title)}</h1>${blocks.map(block).join("")}</section>`,
  );
  return (
    `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${POLICY}">` +
    `<meta name="viewport" content="width=device-width"><title>${escapeHtml(paper.title)}</title>` +
    `<style>${paperStyle(size)}</style></head><body><main${paper.isCards === true ? ' class="cards"' : ""}>${pages.join("")}</main></body></html>`
  );
}

function block(of: PaperBlock): string {
  switch (of.kind) {
    case "heading":
      return `<h2>${escapeHtml(of.text)}</h2>`;
    case "text":
      return `<p>${escapeHtml(of.text)}</p>`;
    case "caution":
      return `<p class="caution">${escapeHtml(of.text)}</p>`;
    case "facts": {
      const said = of.facts.filter(([, says]) => says !== "");
      if (said.length === 0) return "";
      return `<dl>${said.map(([word, says]) => `<dt>${escapeHtml(word)}</dt><dd>${escapeHtml(says)}</dd>`).join("")}</dl>`;
    }
    case "table":
      return tableHtml(of.caption, of.table);
    case "lines":
      return of.words.map((word) => `<div class="line">${escapeHtml(word)}</div>`).join("");
    case "pictures": {
      const figures = of.pictures.flatMap(({ dataUrl, says }) => {
        const source = pictureSource(dataUrl);
        return source === ""
          ? []
          : [`<figure><img src="${source}" alt=""><figcaption>${escapeHtml(says)}</figcaption></figure>`];
      });
      return figures.length === 0 ? "" : `<div class="figures">${figures.join("")}</div>`;
    }
    case "picture": {
      const source = pictureSource(of.dataUrl);
      return source === "" ? "" : `<img src="${source}" alt="${escapeHtml(of.says)}">`;
    }
  }
}

function tableHtml(caption: string, { headings, rows }: DocumentTable): string {
  const isNumber = headings.map((_, column) => rows.some((row) => typeof row[column] === "number"));
  const kindOf = (column: number): string => (isNumber[column] === true ? "number" : "text");
  const head = headings.map(
    (heading, column) => `<th scope="col" class="${kindOf(column)}">${escapeHtml(heading)}</th>`,
  );
  const body = rows.map(
    (row) =>
      `<tr>${row.map((cell, column) => `<td class="${typeof cell === "string" && SHORT.test(cell) ? "short" : kindOf(column)}">${escapeHtml(sayCell(cell))}</td>`).join("")}</tr>`,
  );
  const said = caption === "" ? "" : `<caption>${escapeHtml(caption)}</caption>`;
  return `<div class="wide" tabindex="0" role="group" aria-label="${escapeHtml(caption === "" ? "Table" : caption)}"><table>${said}<thead><tr>${head.join("")}</tr></thead><tbody>${body.join("")}</tbody></table></div>`;
}

function sayCell(cell: DocumentCell): string {
  if (cell === null) return "";
  return typeof cell === "number" ? figures.format(cell) : cell;
}
