import type { Server } from "node:http";
import type { Browser, Page } from "playwright-core";
import { buildBench, benchFolder } from "../../src/build/buildBench.mjs";
import { serveBench } from "../../src/build/serveBench.mjs";
import { launchBrowser } from "./launchBrowser";

export interface OpenBench {
  readonly page: Page;
  readonly address: string;
  /** What the page complained of in its console, and what it threw. */
  readonly complaints: string[];
  /** Every address the page asked for. */
  readonly requests: string[];
  readonly close: () => Promise<void>;
}

interface Options {
  readonly entry?: string;
  readonly folder?: string;
  readonly width?: number;
  readonly height?: number;
  readonly dark?: boolean;
}

/** The bench, built where it is out of date, served on a free port and open in a browser, ready to be typed into. */
export async function openBench({
  entry,
  folder = benchFolder,
  width = 1400,
  height = 850,
  dark = false,
}: Options = {}): Promise<OpenBench> {
  await buildBench({ entry, folder });
  const { server, port }: { server: Server; port: number } = await serveBench({ folder, port: 0 });
  const browser: Browser = await launchBrowser();
  const page = await browser.newPage({ viewport: { width, height }, colorScheme: dark ? "dark" : "light" });
  const complaints: string[] = [];
  const requests: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("request", (request) => requests.push(request.url()));
  const address = `http://127.0.0.1:${port}/`;
  await page.goto(address);
  await page.waitForSelector("body[data-ready]", { timeout: 60_000 });
  const close = async () => {
    await browser.close();
    await new Promise((resolve) => server.close(resolve));
  };
  return { page, address, complaints, requests, close };
}
