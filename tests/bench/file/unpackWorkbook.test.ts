import { strToU8, zipSync } from "fflate";
import { sayProblem } from "../../../src/domain/wording";
import { unpackWorkbook } from "../../../src/bench/file/unpackWorkbook";

function said(bytes: Uint8Array): string {
  const outcome = unpackWorkbook(bytes, "pull.xlsx");
  return outcome.ok ? "" : sayProblem(outcome.problem);
}

test("a file that is no zip is no workbook", () => {
  expect(said(strToU8("Piece,Lender\n"))).toMatch(/"pull\.xlsx" was not opened, since it is not an Excel workbook/);
  expect(said(new Uint8Array())).toMatch(/not an Excel workbook/);
});

test("a zip without a workbook in it is no workbook", () => {
  expect(said(zipSync({ "readme.txt": strToU8("hello") }))).toMatch(/not an Excel workbook/);
});

test("a file with a password, or of before 2007, is named as such", () => {
  expect(said(new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]))).toMatch(/password/);
});

test("a binary workbook says what to save it as", () => {
  expect(said(zipSync({ "xl/workbook.bin": new Uint8Array(4) }))).toMatch(/binary workbook; save it as \.xlsx/);
});

test("a file over 50 MB is refused before it is read", () => {
  expect(said(new Uint8Array(50 * 1024 * 1024 + 1))).toMatch(/larger than 50 MB/);
});

test("a small file that unpacks to a vast one is refused before it is unpacked", () => {
  // The sizes stand in the central directory; here one entry claims 3 GB.
  const bytes = zipSync({ "xl/workbook.xml": strToU8("<workbook/>") });
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = 0; at < bytes.length - 4; at++) {
    if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 3_000_000_000, true);
  }
  expect(said(bytes)).toMatch(/unpacks to more than 400 MB/);
});

test("a file that was cut off is damaged", () => {
  const whole = zipSync({ "xl/workbook.xml": strToU8("<workbook/>".repeat(1000)) });
  expect(said(whole.slice(0, whole.length - 30))).toMatch(/damaged/);
});
