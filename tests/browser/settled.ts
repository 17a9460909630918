import type { Page } from "playwright-core";

/** Longer than a change takes to start a calculation, and than the page gathers changes before it tells the cell. */
const QUIET_MS = 300;

/** Waits until the grid has calculated, and the line under the header has said so. */
export async function settled(page: Page): Promise<void> {
  await page.evaluate(() => delete document.body.dataset.quietSince);
  await page.waitForFunction(
    (quietMs) => {
      const held = document.body.dataset;
      const busy = document.getElementById("grid")?.ariaBusy === "true";
      const said = document.getElementById("cell-live")?.textContent ?? "";
      if (busy || said !== held.quietSaid || held.quietSince === undefined) {
        held.quietSaid = said;
        held.quietSince = String(performance.now());
      }
      return performance.now() - Number(held.quietSince) >= quietMs;
    },
    QUIET_MS,
    { timeout: 30_000 },
  );
}
