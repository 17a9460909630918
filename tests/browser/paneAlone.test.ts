import type { Locator, Page } from "playwright-core";
import { launchPane, type PaneBrowser } from "./openPane";
import { manySheets, messySheets, TODAY } from "./messySheets";
import type { PanePage } from "./panePage";

let browser: PaneBrowser;
beforeAll(async () => {
  browser = await launchPane();
}, 120_000);
afterAll(() => browser.close());
jest.setTimeout(60_000);

/** A cell of the workbook behind the pane. */
const held = (page: Page, row: number, column: number) =>
  page.evaluate(([r, c]) => (globalThis as unknown as PanePage).port.at("s0", r as number, c as number), [row, column]);
/** Opens the findings of one kind where they are not open already. */
async function opened(check: Locator, kind: RegExp): Promise<void> {
  const opener = check.getByRole("button", { name: kind });
  if ((await opener.getAttribute("aria-expanded")) === "false") await opener.click();
}
const standing = (page: Page) => page.locator("[role=status]").first().innerText();
const standingChanges = async (page: Page, before: string) => {
  await page.waitForFunction((text) => document.querySelector("[role=status]")?.textContent !== text, before);
  return standing(page);
};

describe.each([
  ["at 320 px by day", { width: 320 }],
  ["at 420 px by night", { width: 420, dark: true }],
  ["in forced colours", { width: 360, forcedColors: true }],
  ["at a zoom of 200 %, which leaves half the width and height of 640 by 800", { width: 320, height: 400 }],
])("%s", (_, options) => {
  test.each(["Today", "Check"] as const)(
    "%s has no barrier that axe knows of, nothing sticks out, and every target is 24 px",
    async (name) => {
      const { page, view, barriers, complaints } = await browser.open(messySheets, TODAY, options);
      await view(name);
      expect(await barriers()).toEqual([]);
      const tooWide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(tooWide).toBeLessThanOrEqual(0);
      const tooSmall = await page
        .locator(
          "[role=tabpanel]:visible :is(button, select, summary, input:not([type=checkbox])):visible, [role=tab]:visible",
        )
        .evaluateAll((targets) =>
          targets
            // The button inside a field stands within the field's own target.
            .map((target) => ({ box: target.getBoundingClientRect(), text: target.textContent ?? "" }))
            .filter(({ box }) => box.width < 24 || box.height < 23.5)
            .map(({ box, text }) => `${text} ${box.width} x ${box.height}`),
        );
      expect(tooSmall).toEqual([]);
      expect(complaints).toEqual([]);
      await page.close();
    },
  );
});

test("a fix writes the cell, says what was done, and restore puts back what was there", async () => {
  const { page, view } = await browser.open(messySheets, TODAY);
  const check = await view("Check");
  const before = await standing(page);
  await opened(check, /A date that is kept as text/);
  await check.getByRole("button", { name: "Fix: Make it the date 2026-03-09, at Loans!E3" }).click();
  expect(await standingChanges(page, before)).not.toBe(before);
  expect(await held(page, 2, 4)).toBe(46090);
  await page.getByRole("button", { name: "Restore what was there" }).click();
  await page
    .getByRole("region", { name: "Messages" })
    .getByText("Put back as it was: Make it the date 2026-03-09, at Loans!E3")
    .waitFor();
  expect(await held(page, 2, 4)).toBe("9 Mar 2026");
  await page.getByRole("button", { name: "Do it again" }).click();
  await page
    .getByRole("region", { name: "Messages" })
    .getByText("Done: Make it the date 2026-03-09, at Loans!E3")
    .waitFor();
  expect(await held(page, 2, 4)).toBe(46090);
  await page.close();
});

test("all fixes of a kind are shown before and after, and written as one step", async () => {
  const { page, view } = await browser.open(messySheets, TODAY);
  const check = await view("Check");
  await opened(check, /A date that is kept as text/);
  await check.getByRole("button", { name: "Fix all 2…" }).click();
  const heading = check.getByRole("heading", { name: "2 cells would be written in one step" });
  await heading.waitFor();
  expect(await heading.evaluate((element) => element === document.activeElement)).toBe(true);
  expect(await check.getByRole("row", { name: 'Loans!E3 "9 Mar 2026" 2026-03-09' }).count()).toBe(1);
  expect(await held(page, 2, 4)).toBe("9 Mar 2026");
  await check.getByRole("button", { name: "Write 2 cells" }).click();
  await page
    .getByRole("region", { name: "Messages" })
    .getByText(/^Done: 2 cells written/)
    .waitFor();
  expect([await held(page, 2, 4), await held(page, 3, 4)]).toEqual([46090, 46091]);
  expect(
    await page.evaluate(() => (globalThis as unknown as PanePage).port.calls.filter((call) => call === "write")),
  ).toHaveLength(1);
  await page.close();
});

test("a finding is ignored only with a reason, is kept in the workbook, and comes back when the cell changes", async () => {
  const { page, view } = await browser.open(messySheets, TODAY);
  const check = await view("Check");
  const before = await standing(page);
  await check.getByRole("button", { name: "Ignore this finding at Loans!E6" }).click();
  await page.keyboard.press("Enter");
  await check.getByText("Give a reason").waitFor();
  expect(await standing(page)).toBe(before);
  await page.keyboard.type("agreed with the lender");
  await page.keyboard.press("Enter");
  const ignored = await standingChanges(page, before);
  const kept = await page.evaluate(() => [...(globalThis as unknown as PanePage).port.kept.values()].join());
  expect(kept).toContain("agreed with the lender");
  await check.getByText("1 finding ignored").click();
  await check.getByText(/Ignored on 2026-03-05: agreed with the lender/).waitFor();

  await page.evaluate(() => (globalThis as unknown as PanePage).port.typed("s0", 5, 4, "05/04/26"));
  expect(await standingChanges(page, ignored)).toBe(before);
  await check.getByText(/Not found at present/).waitFor();
  await page.close();
});

test.each([500, 400])(
  "an edit is seen at once, without losing what is shown, the scroll place or the focus, in a height of %d px",
  async (height) => {
    const { page, view } = await browser.open(manySheets(300), TODAY, { height });
    const check = await view("Check");
    await opened(check, /A date that is kept as text/);
    const expandable = check.getByRole("button", { name: /^Show 50 more of/ });
    if ((await expandable.count()) > 0) await expandable.click();
    const target = check.getByRole("button", { name: "Go to Loans!E30" });
    await target.focus();
    await target.evaluate((element) => element.scrollIntoView({ block: "center" }));
    await page.waitForTimeout(200);
    const place = () => target.evaluate((element) => Math.round(element.getBoundingClientRect().top));
    const topBefore = await place();
    const before = await standing(page);
    await page.evaluate(() => (globalThis as unknown as PanePage).port.typed("s0", 3, 4, 46090));
    await standingChanges(page, before);
    expect(Math.abs((await place()) - topBefore)).toBeLessThanOrEqual(2);
    expect(await target.evaluate((element) => element === document.activeElement)).toBe(true);
    await page.close();
  },
);

test("when the finding that has the focus goes, the one that takes its place gets it", async () => {
  const { page, view } = await browser.open(manySheets(5), TODAY);
  const check = await view("Check");
  await check.getByRole("button", { name: "Fix: Make it the date 2026-03-09, at Loans!E3" }).focus();
  const before = await standing(page);
  await page.keyboard.press("Enter");
  await standingChanges(page, before);
  const focused = await page.evaluate(
    () => document.activeElement?.getAttribute("aria-label") ?? document.activeElement?.tagName,
  );
  expect(focused).toBe("Go to Loans!E4");
  await page.close();
});

test("10,000 findings are shown a page at a time", async () => {
  const { page, view, complaints } = await browser.open(manySheets(10_000), TODAY);
  const check = await view("Check");
  await check.getByText("in 10,000 pieces").waitFor();
  expect(await check.getByRole("listitem").count()).toBeLessThan(100);
  expect(complaints).toEqual([]);
  await page.close();
});

test("the views are worked by keyboard alone", async () => {
  const { page } = await browser.open(messySheets, TODAY);
  await page.keyboard.press("Tab");
  const focusedText = () => page.evaluate(() => document.activeElement?.textContent ?? "");
  expect(await focusedText()).toBe("Today");
  await page.keyboard.press("ArrowRight");
  expect(await focusedText()).toMatch(/^Check/);
  await page.keyboard.press("Enter");
  await page.getByRole("tabpanel", { name: /^Check/ }).waitFor();
  const met: string[] = [];
  for (let press = 0; press < 12; press++) {
    await page.keyboard.press("Tab");
    met.push(
      await page.evaluate(
        () => document.activeElement?.getAttribute("aria-label") ?? document.activeElement?.textContent ?? "",
      ),
    );
  }
  expect(met.join("\n")).toMatch(/error.*warning.*note.*Kind of finding[\s\S]*Go to Loans!/s);
  await page.close();
});

test.each([
  ["protected", /protected/],
  ["changed behind the pane's back", /was when checked|something else/],
  ["deleted", /gone|no longer/],
] as const)(
  "a fix of a sheet that is %s says so in a sentence and loses nothing that is shown",
  async (how, sentence) => {
    const { page, view, complaints } = await browser.open(messySheets, TODAY);
    const check = await view("Check");
    await opened(check, /A date that is kept as text/);
    const fix = check.getByRole("button", { name: "Fix: Make it the date 2026-03-09, at Loans!E3" });
    // At once in the page, before the pane can have read again.
    await fix.evaluate((button, what) => {
      const { port } = globalThis as unknown as PanePage;
      if (what === "protected") port.protectSheet("s0");
      if (what === "changed behind the pane's back") port.typed("s0", 2, 4, "tbc");
      if (what === "deleted") port.deleteSheet("s0");
      (button as HTMLElement).click();
    }, how);
    await page.waitForFunction(() => document.querySelector("[role=alert]")?.textContent !== "");
    expect(await page.locator("[role=alert]").innerText()).toMatch(sentence);
    expect(await page.getByRole("button", { name: "Restore what was there" }).count()).toBe(0);
    await page.getByRole("button", { name: "Close this message" }).click();
    expect(complaints).toEqual([]);
    await page.close();
  },
);

test.each(["readWorkbook", "readSheet", "writeKept", "goTo"] as const)(
  "a %s that fails leaves what is shown",
  async (call) => {
    const { page, view, complaints } = await browser.open(messySheets, TODAY);
    const check = await view("Check");
    const before = await standing(page);
    await page.evaluate((name) => (globalThis as unknown as PanePage).port.failNext(name), call);
    if (call === "goTo")
      await check
        .getByRole("button", { name: /^Go to/ })
        .first()
        .click();
    if (call === "writeKept") {
      await check
        .getByRole("button", { name: /^Ignore this finding/ })
        .first()
        .click();
      await page.keyboard.type("agreed");
      await page.keyboard.press("Enter");
    }
    if (call === "readSheet" || call === "readWorkbook") {
      await page.evaluate(() => (globalThis as unknown as PanePage).port.typed("s3", 5, 5, "x"));
    }
    await page.waitForTimeout(500);
    expect(await standing(page)).toBe(before);
    if (call === "goTo" || call === "writeKept") expect(await page.locator("[role=alert]").innerText()).not.toBe("");
    expect(complaints).toEqual([]);
    await page.close();
  },
);

test("a workbook without a table says so and how to make one, in both views, and reads it as soon as it is typed", async () => {
  const { page, view, barriers } = await browser.open([{ name: "Sheet1", rows: [["hello"]] }], TODAY);
  const check = await view("Check");
  await check.getByRole("heading", { name: "No table could be read" }).waitFor();
  expect(await barriers()).toEqual([]);
  await page.evaluate((rows) => {
    const { port } = globalThis as unknown as PanePage;
    rows.forEach((cells, row) => cells.forEach((cell, column) => port.typed("s0", row, column, cell)));
  }, messySheets[0]?.rows ?? []);
  await check.getByText("in 6 pieces").waitFor();
  await page.close();
});

test("an area whose headings are hardly understood is named with its place and the remedy", async () => {
  const odd = {
    name: "Odds",
    rows: [
      ["Lender", "Zing", "Zang", "Due", "Zong"],
      ["Ado & Fils", 1, 2, TODAY, 3],
    ],
  };
  const { page, view } = await browser.open([...messySheets, odd], TODAY);
  const check = await view("Check");
  await check.getByText(/that could not be/).click();
  expect(await check.getByRole("button", { name: "Go to Odds!A1" }).count()).toBe(1);
  await page.close();
});

test("a clean workbook says in plain words that nothing was found", async () => {
  const clean = [
    {
      name: "Loans",
      rows: [
        ["Piece", "Description", "Lender", "Out", "Due", "Back", "Value"],
        ["1", "wool coat", "Ado & Fils", TODAY - 9, TODAY + 4, null, 1250],
      ],
    },
  ];
  const { page, view } = await browser.open(clean, TODAY);
  const check = await view("Check");
  expect(await check.innerText()).toContain("Nothing found in 1 piece, as of Thu 2026-03-05, today.");
  await page.close();
});

test("Today lists what is late, due and to be sent, keeps currencies apart, and says which look is next", async () => {
  const { page, view } = await browser.open(messySheets, TODAY, { height: 2400 });
  const today = await view("Today");
  const text = await today.innerText();
  for (const said of [
    "Late: 1 piece",
    "2 days late",
    "Due on the day: 1 piece",
    "Due next: Mon 2026-03-09",
    "Cannot be told: 1 row",
    "Value out in GBP",
    "Value out in EUR",
    "Next look, Thu 2026-03-05",
    "Look 1, Mina",
    "before the wrap at 18:00",
  ]) {
    expect(text).toContain(said);
  }
  await today.getByRole("button", { name: /^1 wool coat, go to Loans!E2/ }).click();
  expect(await page.evaluate(() => (globalThis as unknown as PanePage).port.wentTo)).toEqual([
    { sheetId: "s0", row: 1, column: 4 },
  ]);
  await page.close();
});

test("a cover limit that is typed is kept, and what is over it is said in words", async () => {
  const { page, view } = await browser.open(messySheets, TODAY);
  const today = await view("Today");
  await today.getByLabel("Cover limit in GBP").fill("1,500");
  await page.keyboard.press("Enter");
  await today.getByText("Over the cover of GBP 1,500 by GBP 195").waitFor();
  await today.getByLabel("Cover limit in EUR").fill("lots");
  await page.keyboard.press("Enter");
  await today.getByText('Cover limit: "lots" cannot be used').waitFor();
  expect(await page.evaluate(() => (globalThis as unknown as PanePage).port.kept.get("cover-limits"))).toContain(
    '"GBP":1500',
  );
  await page.close();
});

test("another day counts for both views, is labelled as not today, and today is one button away", async () => {
  const { page, view } = await browser.open(messySheets, TODAY);
  const today = await view("Today");
  await today.getByLabel("As of").fill("2026-03-20");
  await today.getByText("Today is Thu 2026-03-05.", { exact: false }).waitFor();
  await today.getByText("Late: 6 pieces in 5 rows").waitFor();
  const check = await view("Check");
  await check.getByText("as of Fri 2026-03-20.").waitFor();
  await view("Today");
  await today.getByRole("button", { name: "Today instead" }).click();
  await today.getByText("Late: 1 piece").waitFor();
  await page.close();
});
