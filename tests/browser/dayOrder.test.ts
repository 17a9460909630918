import type { Page } from "playwright-core";
import { launchPane, type PaneBrowser } from "./openPane";
import { TODAY } from "./messySheets";
import type { PanePage } from "./panePage";

let browser: PaneBrowser;
beforeAll(async () => {
  browser = await launchPane();
}, 120_000);
afterAll(() => browser.close());
jest.setTimeout(60_000);

/** A day under two dressers that ends 20 minutes after wrap in the order given. The page's clock stands at 10:30. */
const daySheets = [
  {
    name: "Looks",
    rows: [
      ["Look", "Order", "Date", "Talent", "Change", "Hair and make-up", "Shooting"],
      [1, 1, TODAY, "Mina", 30, 40, 30],
      [2, 2, TODAY, "Teo", 10, 10, 50],
      [3, 3, TODAY, "Mina", 20, 0, 40],
      [4, 4, TODAY, "Adaeze", 15, 30, 45],
    ],
  },
  {
    name: "Day",
    rows: [
      ["Date", TODAY],
      ["Call", "08:00"],
      ["Wrap", "11:30"],
    ],
  },
];

const orders = (page: Page) =>
  page.evaluate(() => [1, 2, 3, 4].map((row) => (globalThis as unknown as PanePage).port.at("s0", row, 1)));

describe.each([
  ["at 320 px by day", { width: 320 }],
  ["at 420 px by night", { width: 420, dark: true }],
  ["in forced colours", { width: 360, forcedColors: true }],
])("%s", (_, options) => {
  test("the day's picture, its table and the list to try an order in have no barrier that axe knows of, and nothing sticks out", async () => {
    const { page, view, barriers, complaints } = await browser.open(daySheets, TODAY, { ...options, height: 2400 });
    const today = await view("Today");
    await today.getByText("The day as a table").click();
    await today.getByText("Try another order").click();
    expect(await barriers()).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    const small = await today
      .locator(":is(button, summary):visible")
      .evaluateAll((targets) => targets.filter((target) => target.getBoundingClientRect().height < 23.5).length);
    expect(small).toBe(0);
    const cutWords = await today.getByRole("img", { name: /^The day from/ }).evaluate((picture) => {
      const { left, right } = picture.getBoundingClientRect();
      return [...picture.querySelectorAll("text")]
        .filter(
          (word) => word.getBoundingClientRect().left < left - 0.5 || word.getBoundingClientRect().right > right + 0.5,
        )
        .map((word) => word.textContent);
    });
    expect(cutWords).toEqual([]);
    expect(complaints).toEqual([]);
    await page.close();
  });
});

test("the picture says the day in words, marks now only on the day itself, and its table has the same times", async () => {
  const { page, view } = await browser.open(daySheets, TODAY, { height: 2000 });
  const today = await view("Today");
  const picture = today.getByRole("img", { name: /^The day from 08:00 to/ });
  expect(await picture.getAttribute("aria-label")).toContain("now 10:30");
  expect(await picture.locator("text").allTextContents()).toEqual(
    expect.arrayContaining(["Mina", "Teo", "Adaeze", "Chair", "Dresser", "Camera", "wrap", "now"]),
  );
  await today.getByText("The day as a table").click();
  const rows = await today.getByRole("table").last().getByRole("row").allInnerTexts();
  expect(rows).toContain("Mina\tchange, look 1\t08:40\t09:10");
  expect(rows).toContain("Everyone\twrap\t11:30\t");
  await today.getByLabel("As of").fill("2026-03-04");
  await today.getByText("Today is Thu 2026-03-05.", { exact: false }).waitFor();
  expect(await picture.getAttribute("aria-label")).not.toContain("now");
  await page.close();
});

test("a look is moved by keyboard, keeps the focus, and the end of the day is said; nothing is written", async () => {
  const { page, view } = await browser.open(daySheets, TODAY, { height: 2000 });
  const today = await view("Today");
  await today.getByText("Try another order").click();
  const list = today.getByRole("list", { name: "Looks in the order tried" });
  const result = today.getByText(/^The last shot ends at .* in the order given/);
  const before = await result.innerText();
  await list.getByRole("button", { name: "Look 4, Adaeze: earlier" }).focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("Enter");
  expect(
    (await list.getByRole("listitem").allInnerTexts()).map((text) => text.split(" ").slice(0, 3).join(" ")),
  ).toEqual(["1. Look 1,", "2. Look 4,", "3. Look 2,", "4. Look 3,"]);
  expect(await page.evaluate(() => document.activeElement?.getAttribute("aria-label"))).toBe("Look 4, Adaeze: earlier");
  expect(await result.innerText()).not.toBe(before);
  expect(await orders(page)).toEqual([1, 2, 3, 4]);
  await today.getByRole("button", { name: "Back to the order given" }).click();
  expect(await result.innerText()).toBe(before);
  await page.close();
});

test("a look is dragged to another place", async () => {
  const { page, view } = await browser.open(daySheets, TODAY, { height: 2000 });
  const today = await view("Today");
  await today.getByText("Try another order").click();
  const items = today.getByRole("list", { name: "Looks in the order tried" }).getByRole("listitem");
  await items.nth(0).dragTo(items.nth(2));
  expect((await items.allInnerTexts()).map((text) => text.split(",")[0])).toEqual([
    "1. Look 2",
    "2. Look 3",
    "3. Look 1",
    "4. Look 4",
  ]);
  await page.close();
});

test("the best order is shown, written as one step after what it replaces is shown, and put back", async () => {
  const { page, view } = await browser.open(daySheets, TODAY, { height: 2000 });
  const today = await view("Today");
  await today.getByText("Try another order").click();
  await today.getByRole("button", { name: "Best order found" }).click();
  await today.getByText(/It saves \d+ min\. Proved best/).waitFor();
  await today.getByRole("button", { name: "Write this order to the sheet…" }).click();
  expect(await orders(page)).toEqual([1, 2, 3, 4]);
  const cells = await today.getByRole("heading", { name: /would be written in one step/ }).innerText();
  await today.getByRole("button", { name: `Write ${cells.split(" would")[0]}` }).click();
  await page
    .getByRole("region", { name: "Messages" })
    .getByText(/^Done: Order of \d looks/)
    .waitFor();
  const written = await orders(page);
  expect(written).not.toEqual([1, 2, 3, 4]);
  expect([...written].sort()).toEqual([1, 2, 3, 4]);
  expect(
    await page.evaluate(() => (globalThis as unknown as PanePage).port.calls.filter((call) => call === "write")),
  ).toHaveLength(1);
  await page.getByRole("button", { name: "Restore what was there" }).click();
  await page
    .getByRole("region", { name: "Messages" })
    .getByText(/^Put back as it was/)
    .waitFor();
  expect(await orders(page)).toEqual([1, 2, 3, 4]);
  await page.close();
});

/** A day of forty looks under one dresser, whose best order takes a while to look for. */
const longDay = [
  {
    name: "Looks",
    rows: [
      ["Look", "Order", "Date", "Talent", "Set", "Change", "Hair and make-up", "Shooting"],
      ...Array.from({ length: 40 }, (_, index) => [
        index + 1,
        index + 1,
        TODAY,
        ["Mina", "Teo", "Adaeze", "Li"][(index * index) % 4]!,
        ["roof", "stairs"][index % 2]!,
        5 + ((index * 7) % 20),
        (index % 3) * 10,
        10 + ((index * 11) % 25),
      ]),
    ],
  },
  {
    name: "Day",
    rows: [
      ["Date", TODAY],
      ["Call", "08:00"],
    ],
  },
];

test("while the best order is looked for the page goes on, and the search can be left off or is left off by another order", async () => {
  const { page, view } = await browser.open(longDay, TODAY, { height: 2000 });
  const today = await view("Today");
  await today.getByText("Try another order").click();
  const list = today.getByRole("list", { name: "Looks in the order tried" });
  const firstLook = async () => (await list.getByRole("listitem").first().innerText()).split(",")[0];
  const best = today.getByRole("button", { name: "Best order found" });

  await best.click();
  await today.getByRole("button", { name: "Stop looking" }).click();
  await best.waitFor();
  expect(await firstLook()).toBe("1. Look 1");

  await best.click();
  await list.getByRole("button", { name: "Look 2, Teo: earlier" }).click();
  await best.waitFor();
  expect(await firstLook()).toBe("1. Look 2");

  await page.evaluate(() => {
    const seen = globalThis as unknown as { turns: number };
    seen.turns = 0;
    setInterval(() => seen.turns++, 5);
  });
  await best.click();
  await today.getByText(/Proved best|Best found/).waitFor();
  expect(await page.evaluate(() => (globalThis as unknown as { turns: number }).turns)).toBeGreaterThan(5);
  await page.close();
});

test.each([320, 420, 900])(
  "at %d px the picture is drawn as wide as it is shown, so that its words keep their size",
  async (width) => {
    const { page, view } = await browser.open(daySheets, TODAY, { width, height: 2000 });
    const picture = (await view("Today")).getByRole("img", { name: /^The day from/ });
    const shown = await picture.elementHandle();
    await page.waitForFunction((svg) => {
      const { width } = svg!.getBoundingClientRect();
      return Math.abs(width / (svg as SVGSVGElement).viewBox.baseVal.width - 1) < 0.05;
    }, shown);
    const words = await picture
      .locator("text")
      .evaluateAll((texts) => texts.map((text) => text.getBoundingClientRect().height));
    expect(Math.max(...words)).toBeLessThan(18);
    await page.close();
  },
);
