import { loadSource } from "../loadSource.mjs";
import { showRow } from "./showRow.mjs";

const CALL = 8 / 24;
const CREW = {
  dressers: 1,
  chairs: 1,
  cameras: 1,
  meal: { afterHours: 6, minutes: 45 },
  crossingMinutes: 15,
  handOverMinutes: 0,
};
const TALENTS = ["Ines", "Teo", "Mina", "Jonas"];
const SETS = ["studio", "roof", "stairs"];

/** A day of so many looks, drawn by lot: four talents, three sets, one chair, one dresser, one camera, a meal. */
function drawnDay(lookCount, random) {
  const pick = (some) => some[Math.floor(random() * some.length)];
  const looks = Array.from({ length: lookCount }, (_, index) => ({
    key: String(index + 1),
    label: index + 1,
    talents: [pick(TALENTS)],
    talentText: "",
    order: null,
    date: null,
    set: pick(SETS),
    where: null,
    pieces: [],
    changeMinutes: pick([5, 10, 15, 20, 25]),
    changeRange: null,
    hairMakeupMinutes: pick([0, 0, 10, 20, 30]),
    shootingMinutes: pick([15, 20, 30, 40]),
    makeupFirst: true,
    arrivesAt: null,
    shotAt: null,
    after: [],
    fixed: null,
  }));
  return { looks, call: CALL, crew: CREW, changes: new Map() };
}

/** The best order of a day's looks: how many are proved best, how far from the best known, how long it takes as the looks grow. */
export async function lookOrders() {
  const { lookOrder } = await loadSource("src/domain/day/lookOrder.ts");
  const { lookOrderEffort } = await loadSource("src/domain/day/lookOrderEffort.ts");
  const { seededRandom } = await loadSource("src/domain/seededRandom.ts");
  const solved = (day, effort) => {
    const start = performance.now();
    const { value } = lookOrder(day, effort);
    return { took: performance.now() - start, ...value };
  };
  const lengthOf = ({ plan }) => plan.ends - plan.call;
  const percent = (share) => `${(100 * share).toFixed(1)}%`;
  solved(drawnDay(8, seededRandom(99)));

  showRow(["the best order of a day's looks", "proved best", "median", "longest", "bar"]);
  for (const lookCount of [6, 9, 12, 18]) {
    const days = Array.from({ length: 20 }, (_, seed) => solved(drawnDay(lookCount, seededRandom(seed + 1))));
    const times = days.map(({ took }) => took).sort((a, b) => a - b);
    const proved = days.filter(({ isProvedBest }) => isProvedBest).length;
    const bar = lookCount > 12 ? "" : "all, under 200 ms";
    const [median, longest] = [times[10], times.at(-1)].map((took) => `${took.toFixed(0)} ms`);
    showRow([`${lookCount} looks, 20 days`, `${proved} of 20`, median, longest, bar]);
  }

  showRow(["40 looks, drawn by lot", "100 times longer", "took", "longer by", "bar"]);
  const effort = lookOrderEffort(40);
  const longer = { ...effort, tries: effort.tries * 100, beginnings: effort.beginnings * 100 };
  for (const seed of [1, 2, 3]) {
    const day = drawnDay(40, seededRandom(seed));
    const [usual, best] = [solved(day), solved(day, longer)];
    const gap = percent(lengthOf(usual) / lengthOf(best) - 1);
    showRow([`day ${seed}`, `${best.took.toFixed(0)} ms`, `${usual.took.toFixed(0)} ms`, gap, "2%, under 1 s"]);
  }

  showRow(["growth", "took", "saved", "above the bound", ""]);
  for (const lookCount of [25, 50, 100, 200]) {
    const day = solved(drawnDay(lookCount, seededRandom(1)));
    const above = percent((day.plan.ends - day.endsNotBefore) / lengthOf(day));
    showRow([`${lookCount} looks`, `${day.took.toFixed(0)} ms`, `${day.minutesSaved.toFixed(0)} min`, above, ""]);
  }
}
