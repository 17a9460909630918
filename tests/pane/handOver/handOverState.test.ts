import { handOverReducer, initialHandOverState } from "../../../src/pane/handOver/handOverReducer";
import { jobOf } from "../../../src/pane/handOver/job/jobOf";
import { parseJob } from "../../../src/pane/handOver/job/parseJob";
import { parseCalendar } from "../../../src/pane/handOver/parseCalendar";
import { picturesOfLooks } from "../../../src/pane/handOver/pictures/picturesOfLooks";
import { readBagLimit } from "../../../src/pane/handOver/readBagLimit";
import { readSheets } from "../readSheets";
import { jobSheets } from "./documents/jobSheets";

test("a picture picked again takes the place of the one of its name", () => {
  const add = (dataUrl: string) =>
    ({ type: "pictures added", pictures: [{ fileName: "look 1.jpg", dataUrl }], unreadFiles: ["notes.txt"] }) as const;
  const twice = handOverReducer(handOverReducer(initialHandOverState, add("data:a")), add("data:b"));
  expect(twice.pictures).toEqual([{ fileName: "look 1.jpg", dataUrl: "data:b" }]);
  expect(handOverReducer(twice, { type: "pictures cleared" })).toEqual(initialHandOverState);
});

test.each([null, "", "nonsense", "[]", "3", "null", '{"job": 3}'])("%j kept of the job is nothing typed", (text) => {
  expect(parseJob(text)).toEqual({});
});

test("what is typed about the job goes before the notes of the workbook, and a blank does not", async () => {
  const { workbook } = await readSheets(jobSheets);
  expect(jobOf(workbook, { job: "Tide line", stylist: " " })).toMatchObject({
    job: "Tide line",
    stylist: "Runa Vale",
    credit: "",
  });
});

test("headings that stand beside each other are no word and its value", async () => {
  const tables = [{ name: "Job", row: 0, column: 0, rowCount: 2, columnCount: 2 }];
  const rows = [
    ["Job", "Details"],
    ["Production", "Tide line"],
  ];
  const { workbook } = await readSheets([{ name: "Job", rows, tables }]);
  expect(jobOf(workbook, {}).job).toBe("Tide line");
});

test.each([
  null,
  "",
  "x",
  "{}",
  '{"id":"a b","savedCount":1}',
  '{"id":"a","savedCount":-1}',
  '{"id":"a","savedCount":1.5}',
])("%j kept of the calendar is none", (text) => {
  expect(parseCalendar(text)).toBeNull();
});
test("what is kept of the calendar is read again", () => {
  expect(parseCalendar('{"id":"a-1","savedCount":2}')).toEqual({ id: "a-1", savedCount: 2 });
});

test.each([
  ["look 7.jpg", "7"],
  ["7.png", "7"],
  ["Look_07 back.JPG", "7"],
  ["007.jpeg", "7"],
  ["12a-front.jpg", "12a"],
  ["IMG_0007.jpg", null],
  ["70.jpg", null],
  ["hero.png", "12a"],
])("the picture %s belongs to look %s", (fileName, key) => {
  const looks = [
    { key: "7", photo: "https://elsewhere.example/photos/x.jpg" },
    { key: "12a", photo: "C:\\shoot\\Hero.png" },
  ];
  const { byLook, left } = picturesOfLooks(looks, [{ fileName, dataUrl: "" }]);
  expect([...byLook.keys()]).toEqual(key === null ? [] : [key]);
  expect(left).toHaveLength(key === null ? 1 : 0);
});

test.each([
  ["10", 10_000],
  ["22 lb", 22 * 453.59237],
  ["800 g", 800],
])("a bag limit of %s is %d grams", (typed, grams) => {
  const limit = readBagLimit(typed);
  expect(limit.ok && limit.value).toBeCloseTo(grams, 6);
});
test.each(["", "heavy", "0", "-3"])("a bag limit of %j is refused", (typed) => {
  expect(readBagLimit(typed).ok).toBe(false);
});
