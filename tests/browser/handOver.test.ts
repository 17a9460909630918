import { readFileSync } from "node:fs";
import type { Download, Locator, Page } from "playwright-core";
import { unzipSync } from "fflate";
import { documentKinds } from "../../src/pane/handOver/documents/documentKinds";
import { DAY, jobSheets } from "../pane/handOver/documents/jobSheets";
import { launchPane, type PaneBrowser } from "./openPane";
import type { PanePage } from "./panePage";
import { wayOut } from "./wayOut";

let browser: PaneBrowser;
beforeAll(async () => {
  browser = await launchPane();
}, 120_000);
afterAll(() => browser.close());
jest.setTimeout(90_000);

const choose = (handOver: Locator, label: string) => handOver.getByLabel("What to hand over").selectOption({ label });
async function saved(page: Page, handOver: Locator, button: string): Promise<{ name: string; bytes: Buffer }> {
  const [download]: [Download, unknown] = await Promise.all([
    page.waitForEvent("download"),
    handOver.getByRole("button", { name: button, exact: true }).click(),
  ]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}
const text = ({ bytes }: { bytes: Buffer }): string => bytes.toString("utf8");

/** A small JPEG as the browser makes it, with a camera's note of place put in behind its first two octets. */
async function jpegWithPlace(page: Page): Promise<Buffer> {
  const plain = await page.evaluate(() => {
    const canvas = document.createElement("canvas");
    canvas.width = 60;
    canvas.height = 40;
    canvas.getContext("2d")?.fillRect(0, 0, 30, 40);
    return canvas.toDataURL("image/jpeg");
  });
  const bytes = Buffer.from(plain.split(",")[1]!, "base64");
  // An APP1 segment with an empty TIFF directory and text behind it (Exif 2.3, 4.5.4 and 4.7.2).
  const payload = Buffer.concat([
    Buffer.from("Exif\0\0MM\0*\0\0\0\b\0\0\0\0\0\0", "latin1"),
    Buffer.from("GPS 50.1234 N 1.2345 W"),
  ]);
  const head = Buffer.from([0xff, 0xe1, (payload.length + 2) >> 8, (payload.length + 2) & 0xff]);
  return Buffer.concat([bytes.subarray(0, 2), head, payload, bytes.subarray(2)]);
}

const everyLabel = documentKinds.map(({ label }) => label);
/** Between them these show every part of the view. */
const someLabels = ["Request letters", "Set cards", "Packing lists"];

describe.each([
  ["at 320 px by day", everyLabel, { width: 320 }],
  ["at 420 px by night", someLabels, { width: 420, dark: true }],
  ["in forced colours", someLabels, { width: 360, forcedColors: true }],
  ["at a zoom of 200 %", someLabels, { width: 320, height: 400 }],
])("%s", (_, labels, options) => {
  test("the view has no barrier that axe knows of, nothing sticks out, and every target is 24 px", async () => {
    const { page, view, barriers, complaints } = await browser.open(jobSheets, DAY, options);
    const handOver = await view("Hand over");
    await handOver.getByText(/^The job:/).click();
    for (const label of labels) {
      await choose(handOver, label);
      await handOver.locator("iframe").waitFor();
      expect([label, await barriers(), await wayOut(page)]).toEqual([label, [], { tooWide: 0, tooSmall: [] }]);
    }
    expect(complaints).toEqual([]);
    await page.close();
  });
});

test("slips are saved as values and as a page that prints one lender a page", async () => {
  const { page, view, complaints } = await browser.open(jobSheets, DAY);
  const handOver = await view("Hand over");
  await choose(handOver, "Return slips");
  const csv = await saved(page, handOver, "Save as values (CSV)");
  expect(csv.name).toBe("Return slips 2026-03-05.csv");
  expect(text(csv).split("\r\n")[1]).toBe("Ado & Fils,1,wool coat,AF-1,,,1,1250,GBP,2026-03-06,good,,,,");
  const html = await saved(page, handOver, "Save as a page");
  await page.setContent(text(html));
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
  expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(2);
  // A4 in points, to the whole point.
  expect(pdf).toMatch(/\/MediaBox\s*\[0 0 59[45](?:\.\d+)? 84[12](?:\.\d+)?\]/);
  expect(complaints).toEqual([]);
  await page.close();
});

test("set cards are printed as many on a page as have room, and slips one on each", async () => {
  const { page, view } = await browser.open(jobSheets, DAY);
  const handOver = await view("Hand over");
  const printed = async (label: string): Promise<string> => {
    await choose(handOver, label);
    await handOver.getByRole("button", { name: "Print…" }).click();
    const frame = page.locator("iframe[aria-hidden]").last();
    await frame.waitFor({ state: "attached" });
    return (await frame.getAttribute("srcdoc")) ?? "";
  };
  const papers = [await printed("Set cards"), await printed("Return slips")];
  const pageCounts: (number | undefined)[] = [];
  for (const paper of papers) {
    await page.setContent(paper);
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    pageCounts.push(pdf.match(/\/Type\s*\/Page\b/g)?.length);
  }
  // Two looks, and two lenders.
  expect(pageCounts).toEqual([1, 2]);
  await page.close();
});

test("printing opens the host's window with the page, made for the paper chosen", async () => {
  const { page, view } = await browser.open(jobSheets, DAY);
  const handOver = await view("Hand over");
  await handOver.getByLabel("Paper").selectOption("Letter");
  await handOver.getByRole("button", { name: "Print…" }).click();
  const frame = page.locator("iframe[aria-hidden]");
  await frame.waitFor({ state: "attached" });
  expect(await frame.getAttribute("srcdoc")).toContain("size: letter");
  expect(await frame.getAttribute("sandbox")).toBe("allow-same-origin allow-modals");
  await page.close();
});

test("due dates are saved under names that stay, each file newer than the last", async () => {
  const { page, view } = await browser.open(jobSheets, DAY);
  const handOver = await view("Hand over");
  await choose(handOver, "Due dates");
  const first = text(await saved(page, handOver, "Save for a calendar"));
  await page.waitForFunction(() =>
    (globalThis as unknown as PanePage).port.kept.get("hand-over-calendar")?.includes('"savedCount":1'),
  );
  const second = text(await saved(page, handOver, "Save for a calendar"));
  const lines = (file: string, field: string) => file.split("\r\n").filter((line) => line.startsWith(field));
  expect(lines(first, "UID:")).toHaveLength(3);
  expect(lines(second, "UID:")).toEqual(lines(first, "UID:"));
  expect([lines(first, "SEQUENCE:")[0], lines(second, "SEQUENCE:")[0]]).toEqual(["SEQUENCE:1", "SEQUENCE:2"]);
  await page.close();
});

test("letters are saved as drafts, noted as asked in one step, and that is put back", async () => {
  const { page, view, complaints } = await browser.open(jobSheets, DAY);
  const handOver = await view("Hand over");
  await handOver.getByText(/^The job:/).click();
  await handOver.getByLabel("Direction").fill("Salt and rope.\nBcc: all@example.org");
  await handOver.getByRole("button", { name: "Keep in the workbook" }).click();
  await handOver.getByText("Kept in the workbook.").waitFor();
  await choose(handOver, "Request letters");
  const drafts = unzipSync(new Uint8Array((await saved(page, handOver, "Save as mail drafts")).bytes));
  expect(Object.keys(drafts)).toEqual(["Loan request Ado Fils.eml", "Loan request Wren Archive.eml"]);
  const draft = Buffer.from(drafts["Loan request Ado Fils.eml"]!).toString("utf8");
  expect(draft.split("\r\n\r\n")[0]).not.toContain("Bcc");
  expect(Buffer.from(draft.split("\r\n\r\n")[1]!, "base64").toString("utf8")).toContain(
    "The direction: Salt and rope.",
  );

  const held = (row: number) => page.evaluate((r) => (globalThis as unknown as PanePage).port.at("s4", r, 1), row);
  await handOver.getByRole("button", { name: "Note 3 requests as asked on Thu 2026-03-05" }).click();
  await handOver.getByText("Nobody is left to be asked").waitFor();
  expect([await held(1), await held(2), await held(3), await held(4)]).toEqual([DAY, DAY - 5, DAY, DAY]);
  await page.getByRole("button", { name: "Restore what was there" }).click();
  await handOver.getByRole("button", { name: /^Note 3 requests/ }).waitFor();
  expect([await held(1), await held(3)]).toEqual([null, null]);
  expect(complaints).toEqual([]);
  await page.close();
});

test("set cards work offline by key, hold the picture without where it was taken, and run nothing that a cell holds", async () => {
  const hostile = '<img src=x onerror="document.title=1"><script>document.title=2</script>';
  const sheets = jobSheets.map((sheet) =>
    sheet.name === "Looks"
      ? {
          ...sheet,
          rows: sheet.rows.map((row, at) => row.map((cell, column) => (at > 0 && column === 4 ? hostile : cell))),
        }
      : sheet,
  );
  const { page, view } = await browser.open(sheets, DAY);
  const handOver = await view("Hand over");
  await choose(handOver, "Set cards");
  const jpeg = await jpegWithPlace(page);
  await handOver.getByLabel("Picture files").setInputFiles([
    { name: "look 2.jpg", mimeType: "image/jpeg", buffer: jpeg },
    { name: "notes.jpg", mimeType: "image/jpeg", buffer: Buffer.from("no picture") },
  ]);
  await handOver.getByText(/^1 picture chosen.*No picture that can be read: notes\.jpg\.$/).waitFor();
  const html = text(await saved(page, handOver, "Save for a phone"));
  const picture = Buffer.from(/base64,([^"]+)"/.exec(html)![1]!, "base64").toString("latin1");
  expect(jpeg.toString("latin1")).toMatch(/Exif[\s\S]*GPS/);
  expect(picture).not.toMatch(/Exif|GPS/);
  await page.close();

  const phone = await page
    .context()
    .browser()!
    .newPage({ viewport: { width: 360, height: 640 } });
  const asked: string[] = [];
  const complaints: string[] = [];
  phone.on("request", (request) => void (request.url().startsWith("data:") || asked.push(request.url())));
  phone.on("console", (message) => complaints.push(message.text()));
  await phone.context().setOffline(true);
  await phone.setContent(html);
  const shown = () =>
    phone.evaluate(() => {
      const main = document.querySelector("main")!;
      return document.querySelectorAll("h1")[Math.round(main.scrollLeft / main.clientWidth)]?.textContent;
    });
  /** Waits until the cards stand still, so that what is done next is done to a card and not to a moving page. */
  const becomes = async (name: string) => {
    const isStill = () =>
      phone.evaluate(() => {
        const main = document.querySelector("main")!;
        return main.scrollLeft % main.clientWidth < 1;
      });
    for (let tries = 0; tries < 60 && !((await shown()) === name && (await isStill())); tries++)
      await phone.waitForTimeout(50);
    expect(await shown()).toBe(name);
    await phone.waitForTimeout(200);
  };
  expect(await shown()).toBe("Look 2");
  expect(
    await phone
      .locator("img")
      .first()
      .evaluate((image) => (image as HTMLImageElement).naturalWidth),
  ).toBe(60);
  await phone.keyboard.press("ArrowRight");
  await becomes("Look 1");
  await phone.keyboard.press("Home");
  await becomes("Look 2");
  await phone.getByText(/^Next: Look 1/).click();
  await becomes("Look 1");
  await phone.mouse.move(180, 300);
  await phone.mouse.wheel(-360, 0);
  await becomes("Look 2");
  expect(await phone.title()).toBe("Set cards 2026-03-05");
  expect(await phone.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  expect([asked, complaints]).toEqual([[], []]);
  await phone.close();
});

test("the view is worked by keyboard alone", async () => {
  const { page, view } = await browser.open(jobSheets, DAY);
  await view("Hand over");
  const met: string[] = [];
  for (let press = 0; press < 11; press++) {
    await page.keyboard.press("Tab");
    met.push(
      await page.evaluate(() => {
        const element = document.activeElement;
        const label = element?.id === "" ? null : document.querySelector(`label[for="${element?.id}"]`);
        return label?.textContent ?? element?.getAttribute("title") ?? element?.textContent ?? "";
      }),
    );
  }
  expect(met.join("\n")).toMatch(
    /What to hand over\nLender\nWith pictures of the pieces\nChoose pictures…\nPaper\nThe job.*\nPrint…\nSave as values \(CSV\)\nPut on a new sheet\nSave as a page\nPreview: Return slips/,
  );
  await page.close();
});

test("rows are put on a sheet of their own with real dates, are counted nowhere, and can be taken away", async () => {
  const { page, view, complaints } = await browser.open(jobSheets, DAY);
  const today = await view("Today");
  const before = await today.innerText();
  const handOver = await view("Hand over");
  await choose(handOver, "Pieces out");
  await handOver.getByRole("button", { name: "Put on a new sheet" }).click();
  const messages = page.getByRole("region", { name: "Messages" });
  await messages.getByText("Done: Pieces out 2026-03-05 on a new sheet").waitFor();
  const sheets = async () => {
    const workbook = await page.evaluate(() => (globalThis as unknown as PanePage).port.readWorkbook());
    return workbook.ok ? workbook.value.sheets : [];
  };
  const added = (await sheets()).find(({ name }) => name === "Pieces out 2026-03-05");
  expect(added?.values[1]).toEqual([
    "Ado & Fils",
    "1",
    "wool coat",
    "AF-1",
    1,
    1250,
    "GBP",
    DAY - 9,
    DAY + 1,
    DAY,
    "due soon",
  ]);
  await view("Today");
  await page.waitForTimeout(500);
  expect(await today.innerText()).toBe(before);
  await page.getByRole("button", { name: "Restore what was there" }).click();
  await messages.getByText(/^Put back as it was/).waitFor();
  expect((await sheets()).map(({ name }) => name)).not.toContain("Pieces out 2026-03-05");
  expect(complaints).toEqual([]);
  await page.close();
});
