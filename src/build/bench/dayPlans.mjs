import { loadSource } from "../loadSource.mjs";
import { fastest } from "./fastest.mjs";
import { showRow } from "./showRow.mjs";
import { timed } from "./timed.mjs";

const TALENTS = ["Ines", "Teo", "Mina", "Jonas", "Adaeze"];

/** A full day whose changes have three figures each, with a meal. */
function uncertainLooks() {
  const looks = [["Look", "Talent", "Low", "Likely", "High", "Hair and make-up", "Shooting"]];
  for (let look = 1; look <= 18; look++) looks.push([look, TALENTS[look % 5], 8, 12 + (look % 5), 30, 15, 20]);
  return looks;
}

const MEAL = [
  ["meal after hours", 6],
  ["meal minutes", 45],
];

/** The plan of a day of 40 looks, twice the looks of a full day; and the chance of a full day, as a ratio to the plans it tries. */
export async function dayPlans() {
  const { dayplan } = await loadSource("src/functions/bindings/dayplan.ts");
  const looks = [["Look", "Talent", "Change", "Hair and make-up", "Shooting"]];
  for (let look = 1; look <= 40; look++)
    looks.push([look, TALENTS[look % 5], 5 + (look % 4) * 5, look % 3 === 0 ? 20 : 0, 15]);
  const took = fastest(timed(50, { plan: () => dayplan(looks, 0.375) }).plan);
  showRow(["one day", "", "function", "", "bar"]);
  showRow(["dayplan, 40 looks", "", `${took.toFixed(2)} ms`, "", "under 5 ms"]);

  const { daychance } = await loadSource("src/functions/bindings/daychance.ts");
  const uncertain = uncertainLooks();
  const times = timed(12, {
    plans: () => {
      for (let run = 0; run < 200; run++) dayplan(uncertain, 0.375, MEAL);
    },
    chance: () => daychance(uncertain, 0.375, 0.75, MEAL),
  });
  const [plans, chance] = [fastest(times.plans) * 10, fastest(times.chance)];
  showRow(["daychance, 18 looks, 2,000 runs", "2,000 plans", "function", "ratio", "bar"]);
  showRow(["", `${plans.toFixed(0)} ms`, `${chance.toFixed(0)} ms`, (chance / plans).toFixed(2), "below 1"]);
}
