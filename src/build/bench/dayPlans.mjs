import { loadSource } from "../loadSource.mjs";
import { fastest } from "./fastest.mjs";
import { showRow } from "./showRow.mjs";
import { timed } from "./timed.mjs";

const TALENTS = ["Ines", "Teo", "Mina", "Jonas", "Adaeze"];

/** The plan of a day of 40 looks, twice the looks of a full day. */
export async function dayPlans() {
  const { dayplan } = await loadSource("src/functions/bindings/dayplan.ts");
  const looks = [["Look", "Talent", "Change", "Hair and make-up", "Shooting"]];
  for (let look = 1; look <= 40; look++)
    looks.push([look, TALENTS[look % 5], 5 + (look % 4) * 5, look % 3 === 0 ? 20 : 0, 15]);
  const took = fastest(timed(50, { plan: () => dayplan(looks, 0.375) }).plan);
  showRow(["one day", "", "function", "", "bar"]);
  showRow(["dayplan, 40 looks", "", `${took.toFixed(2)} ms`, "", "under 5 ms"]);
}
