import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { build } from "esbuild";
import type { Browser, Locator, Page } from "playwright-core";
import type { FakeSheet } from "../pane/fakePort";
import { launchBrowser } from "./launchBrowser";
import type { PanePage } from "./panePage";

const ADDRESS = "http://pane.localhost/";
const PAGE =
  '<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Pane</title>' +
  "<style>html, body, #pane { margin: 0; height: 100% }</style></head>" +
  '<body><div id="pane"></div><script src="pane.js"></script></body></html>';

interface PaneOptions {
  readonly width?: number;
  readonly height?: number;
  readonly dark?: boolean;
  readonly forcedColors?: boolean;
  readonly reducedMotion?: boolean;
}

/** The pane alone, in a browser, over workbooks that a test writes down; nothing outside the page is reached. */
export interface PaneBrowser {
  readonly open: (sheets: readonly FakeSheet[], today: number, options?: PaneOptions) => Promise<OpenPane>;
  readonly close: () => Promise<void>;
}

interface OpenPane {
  readonly page: Page;
  readonly complaints: string[];
  readonly view: (name: string) => Promise<Locator>;
  /** What is wrong for people who do not see or point, by the rules of WCAG 2.2 A and AA. */
  readonly barriers: () => Promise<readonly string[]>;
}

declare const axe: {
  run(root: unknown, options: unknown): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
};

export async function launchPane(): Promise<PaneBrowser> {
  const built = await build({
    entryPoints: [join(__dirname, "panePage.ts")],
    bundle: true,
    write: false,
    format: "iife",
    target: "es2022",
    jsx: "automatic",
    minify: true,
    define: { "process.env.NODE_ENV": '"production"' },
  });
  const script = built.outputFiles[0]?.text ?? "";
  const axeScript = readFileSync(createRequire(__filename).resolve("axe-core/axe.min.js"), "utf8");
  const browser: Browser = await launchBrowser();

  const open = async (sheets: readonly FakeSheet[], today: number, options: PaneOptions = {}): Promise<OpenPane> => {
    const page = await browser.newPage({
      viewport: { width: options.width ?? 360, height: options.height ?? 800 },
      colorScheme: options.dark === true ? "dark" : "light",
      forcedColors: options.forcedColors === true ? "active" : "none",
      reducedMotion: options.reducedMotion === true ? "reduce" : "no-preference",
    });
    page.setDefaultTimeout(30_000);
    const complaints: string[] = [];
    page.on("pageerror", (error) => complaints.push(error.message));
    page.on("console", (message) => {
      if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
    });
    await page.route("**/*", (route) => {
      const url = route.request().url();
      if (url === ADDRESS) return route.fulfill({ contentType: "text/html", body: PAGE });
      if (url === `${ADDRESS}pane.js`) return route.fulfill({ contentType: "text/javascript", body: script });
      if (url === `${ADDRESS}favicon.ico`) return route.fulfill({ status: 204, body: "" });
      complaints.push(`asked for ${url}`);
      return route.abort();
    });
    await page.goto(ADDRESS);
    await page.evaluate(
      ([given, day]) => (globalThis as unknown as PanePage).showPane(given as readonly FakeSheet[], day as number),
      [sheets, today] as const,
    );
    await page.locator("[role=tabpanel] footer").first().waitFor();
    await page.waitForFunction(() => document.querySelector("[role=status]")?.textContent !== "");
    const view = async (name: string): Promise<Locator> => {
      await page.getByRole("tab", { name: new RegExp(`^${name}`) }).click();
      return page.getByRole("tabpanel", { name: new RegExp(`^${name}`) });
    };
    const barriers = async (): Promise<readonly string[]> => {
      await page.evaluate(axeScript);
      const { violations } = await page.evaluate(() =>
        // The tab list's library guards its ends with hidden elements that hand the focus on at once.
        axe.run(
          { exclude: ["[data-tabster-dummy]"] },
          { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] },
        ),
      );
      return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""}`);
    };
    return { page, complaints, view, barriers };
  };
  return { open, close: () => browser.close() };
}
