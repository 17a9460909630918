import type { Page } from "playwright-core";

/** What reaches beyond the page's width, in pixels, and the targets that are smaller than 24 px. */
export async function wayOut(page: Page): Promise<{ readonly tooWide: number; readonly tooSmall: readonly string[] }> {
  const tooWide = await page.evaluate(() => Math.max(0, document.documentElement.scrollWidth - innerWidth));
  const tooSmall = await page
    .locator(
      "[role=tabpanel]:visible :is(button, select, summary, input:not([type=checkbox])):visible, [role=tab]:visible",
    )
    .evaluateAll((targets) =>
      targets
        .map((target) => ({ box: target.getBoundingClientRect(), text: target.textContent ?? "" }))
        .filter(({ box }) => box.width < 24 || box.height < 23.5)
        .map(({ box, text }) => `${text} ${box.width} x ${box.height}`),
    );
  return { tooWide, tooSmall };
}
