import { crc32, inflateSync } from "node:zlib";
import { drawIcon, ICON_SIZES } from "../../src/build/icons/drawIcon.mjs";

/** The chunks of a PNG (ISO/IEC 15948: length, type, data, check sum of type and data). */
function chunks(file: Buffer): { type: string; data: Buffer }[] {
  expect([...file.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  const found: { type: string; data: Buffer }[] = [];
  for (let at = 8; at < file.length;) {
    const length = file.readUInt32BE(at);
    const named = file.subarray(at + 4, at + 8 + length);
    expect(file.readUInt32BE(at + 8 + length)).toBe(crc32(named));
    found.push({ type: named.toString("latin1", 0, 4), data: named.subarray(4) });
    at += 12 + length;
  }
  return found;
}

test.each(ICON_SIZES)("the icon of %i pixels is a PNG of that size with clear corners, cloth and thread", (size) => {
  const [header, data, end] = chunks(drawIcon(size));
  expect([header?.type, data?.type, end?.type]).toEqual(["IHDR", "IDAT", "IEND"]);
  expect([header?.data.readUInt32BE(0), header?.data.readUInt32BE(4)]).toEqual([size, size]);
  const lines = inflateSync(data?.data ?? Buffer.alloc(0));
  expect(lines).toHaveLength(size * (size * 4 + 1));
  const pixel = (x: number, y: number): number[] => [...lines.subarray(y * (size * 4 + 1) + 1 + x * 4).subarray(0, 4)];
  expect(pixel(0, 0)[3]).toBeLessThan(128);
  const half = Math.floor(size / 2);
  const row = Array.from({ length: size }, (_, x) => (pixel(x, half)[0] ?? 0) > 128);
  const stitches = row.filter((isThread, x) => isThread && !row[x - 1]).length;
  expect(stitches).toBe(3);
});

test("an icon is drawn the same each time", () => {
  expect(drawIcon(32).equals(drawIcon(32))).toBe(true);
});
