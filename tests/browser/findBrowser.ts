import { existsSync } from "node:fs";
import { join } from "node:path";

const PLACES: Readonly<Partial<Record<NodeJS.Platform, readonly string[]>>> = {
  linux: [
    "/usr/bin/google-chrome",
    "/usr/bin/google-chrome-stable",
    "/usr/bin/chromium",
    "/usr/bin/chromium-browser",
    "/usr/bin/microsoft-edge",
    "/snap/bin/chromium",
  ],
  darwin: [
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  ],
  win32: ["PROGRAMFILES", "PROGRAMFILES(X86)", "LOCALAPPDATA"].flatMap((folder) => {
    const at = process.env[folder] ?? "";
    return [join(at, "Google/Chrome/Application/chrome.exe"), join(at, "Microsoft/Edge/Application/msedge.exe")];
  }),
};

/** The program of an installed Chrome, Chromium or Edge, or null; BENCH_BROWSER names another. */
export function findBrowser(): string | null {
  const named = process.env.BENCH_BROWSER;
  if (named !== undefined) return named;
  return (PLACES[process.platform] ?? []).find((path) => existsSync(path)) ?? null;
}
