import { sayProblem } from "../../src/domain/wording";
import { readHolidayPlace } from "../../src/sheet/readHolidayPlace";

const nameOf = (raw: unknown) => {
  const place = readHolidayPlace(raw, "country");
  return place.ok ? (place.value?.name ?? null) : sayProblem(place.problem);
};

test("a place is known by its name and its codes, however they are written", () => {
  for (const given of ["England and Wales", " england  AND wales ", "UK-ENG", "gb-eng", "GB EAW", "Wales"])
    expect(nameOf(given)).toBe("England and Wales");
  expect(["US", "U.S.A.", "Éire", "fr", "Milano"].map(nameOf)).toEqual([
    "United States",
    "United States",
    "Ireland",
    "France",
    "Milan",
  ]);
});

test("blank, also 0, is null", () => {
  expect([null, undefined, "", " ", 0].map(nameOf)).toEqual([null, null, null, null, null]);
});

test("the United Kingdom has no holidays of its own: the problem lists its parts", () => {
  for (const given of ["UK", "United Kingdom", "Great Britain"])
    expect(nameOf(given)).toBe(
      `country: "${given}" cannot be used; give United States, England and Wales, Scotland, Northern Ireland, Ireland, France, Italy or Milan.`,
    );
});

test("the days of a place are those of its country and its own", () => {
  const days = (raw: string) => {
    const place = readHolidayPlace(raw, "country");
    return place.ok ? place.value!.days.split("|") : [];
  };
  expect(days("Milan")).toEqual([...days("Italy"), "12-7 Saint Ambrose's Day"]);
  expect(days("Northern Ireland")).toEqual(expect.arrayContaining([...days("England and Wales")]));
});
