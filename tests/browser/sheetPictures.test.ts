import { readFileSync } from "node:fs";
import { picturedWorkbook } from "../bench/picturedWorkbook";
import { openBytes } from "../bench/save/openSample";
import { insertRowAbove3 } from "./insertRowAbove3";
import { openBench, type OpenBench } from "./openBench";

let bench: OpenBench;
beforeAll(async () => {
  bench = await openBench();
}, 180_000);
afterAll(() => bench.close());
jest.setTimeout(90_000);

const RED = [200, 10, 10] as const;
const BLUE = [10, 10, 200] as const;
const GREEN = [10, 160, 10] as const;
const day = (iso: string) => new Date(`${iso}T00:00:00Z`);
const piece = (number: string, description: string, lender: string, look: number) => [
  number,
  description,
  lender,
  300,
  day("2026-03-02"),
  day("2030-03-09"),
  look,
  null,
];

/** Two pieces with a lender each, a look with a picture, and a board of references. */
const workbook = () =>
  picturedWorkbook({
    Pieces: [
      { cells: ["Piece", "Description", "Lender", "Value", "Out", "Due", "Look", "Photo"] },
      { cells: piece("P001", "silk coat", "Maison Orla", 1), picture: RED },
      { cells: piece("P002", "tall boots", "Ado & Fils", 1), picture: BLUE },
    ],
    Looks: [
      { cells: ["Look", "Order", "Talent", "Change", "Shooting", "Photo"] },
      { cells: [1, 1, "Mina", 10, 20, null], picture: GREEN },
    ],
    Board: [{ cells: [null] }, { cells: [null], picture: GREEN }],
  });

const handOver = () => bench.page.getByRole("tabpanel", { name: /^Hand over/ });
const choose = (label: string) => handOver().getByLabel("What to hand over").selectOption({ label });
/** The colours of the pictures in the preview, each rounded to what JPEG leaves of it. */
async function colours(): Promise<string[]> {
  const preview = handOver().frameLocator("iframe");
  await preview.locator("img").first().waitFor({ timeout: 30_000 });
  const sources = await preview
    .locator("img")
    .evaluateAll((images) => images.map((image) => (image as HTMLImageElement).src));
  return bench.page.evaluate(async (urls) => {
    const names = { red: [200, 10, 10], blue: [10, 10, 200], green: [10, 160, 10] };
    return Promise.all(
      urls.map(async (url) => {
        const image = new Image();
        image.src = url;
        await image.decode();
        const context = Object.assign(document.createElement("canvas"), { width: 1, height: 1 }).getContext("2d")!;
        context.drawImage(image, 0, 0, 1, 1);
        const seen = context.getImageData(0, 0, 1, 1).data;
        const near = Object.entries(names).find(([, rgb]) =>
          rgb.every((part, at) => Math.abs(part - (seen[at] ?? 0)) < 12),
        );
        return near?.[0] ?? [...seen].join();
      }),
    );
  }, sources);
}

test("a file with pictures says that the grid does not draw them, and that they are kept", async () => {
  await bench.page.locator("#file").setInputFiles({
    name: "pictures.xlsx",
    mimeType: "application/octet-stream",
    buffer: Buffer.from(await workbook()),
  });
  await bench.page.locator("#notice-text", { hasText: '"pictures.xlsx" has 4 pictures' }).waitFor();
  await bench.page.getByRole("tab", { name: /^Hand over/ }).click();
});

test("each lender's slip shows the pictures of its own pieces, and none where they are not wished", async () => {
  await choose("Return slips");
  await handOver()
    .getByText(/^4 pictures on the sheets/)
    .waitFor();
  expect(await colours()).toEqual(["red", "blue"]);
  const preview = handOver().frameLocator("iframe");
  expect(await preview.locator("figcaption").allTextContents()).toEqual(["P001 silk coat", "P002 tall boots"]);
  await handOver().getByRole("checkbox", { name: "With pictures of the pieces" }).uncheck();
  await preview.locator("h1").first().waitFor();
  expect(await preview.locator("img").count()).toBe(0);
  await handOver().getByRole("checkbox", { name: "With pictures of the pieces" }).check();
  expect(await colours()).toEqual(["red", "blue"]);
});

test("set cards hold the picture of the look and of its pieces in the one file; the direction page has the board too", async () => {
  await choose("Set cards");
  expect(await colours()).toEqual(["green", "red", "blue"]);
  const [file] = await Promise.all([
    bench.page.waitForEvent("download"),
    handOver().getByRole("button", { name: "Save for a phone" }).click(),
  ]);
  const html = readFileSync(await file.path(), "utf8");
  expect(html.match(/src="data:image\/jpeg;base64,/g)).toHaveLength(3);
  await choose("Direction page");
  expect(await colours()).toEqual(["green", "green", "red", "blue"]);
});

test("after a row is put in above them the pictures stay with their pieces, in the pane and in the saved file", async () => {
  // The row at that place is the second here, since rows with pictures are high.
  await insertRowAbove3(bench.page, "Pieces");
  await choose("Return slips");
  const preview = handOver().frameLocator("iframe");
  await preview.locator("figcaption", { hasText: "P002 tall boots" }).waitFor();
  expect(await colours()).toEqual(["red", "blue"]);
  const [file] = await Promise.all([
    bench.page.waitForEvent("download"),
    bench.page.getByRole("button", { name: "Save", exact: true }).click(),
  ]);
  const { pictures } = await openBytes(new Uint8Array(readFileSync(await file.path())));
  expect(pictures.map(({ at }) => at.row)).toEqual([2, 3, 1, 1]);
});

test("nothing was complained of and nothing was asked of any other machine", () => {
  expect(bench.complaints).toEqual([]);
  expect(bench.requests.filter((url) => !/^(?:data:|blob:)/.test(url) && !url.startsWith(bench.address))).toEqual([]);
});
