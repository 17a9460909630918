import { loadSource } from "../loadSource.mjs";
import { fastest } from "./fastest.mjs";
import { seeded } from "./seeded.mjs";
import { showRow } from "./showRow.mjs";
import { timed } from "./timed.mjs";

const HOURS = ["", "10:00", "10-13, 14-18", "11-17"];

/** Stops strewn over a city of some eight kilometres, half of them with opening times, and the minutes between them. */
function strewn(stopCount, seed) {
  const random = seeded(seed);
  const places = Array.from({ length: stopCount + 1 }, () => [random() * 25, random() * 25]);
  const minutes = places.map(([x, y]) => places.map(([u, v]) => Math.ceil(Math.hypot(x - u, y - v))));
  const rows = places.map((_, index) => [`Stop ${index}`, index === 0 ? "" : HOURS[index % 4], index === 0 ? 0 : 5]);
  return { stops: [["Stop", "Open", "Minutes"], ...rows], minutes };
}

/** Shortest tours by trying each next stop in turn, without doors: what an exact answer costs when nothing is remembered. */
function everyTour(minutes) {
  const count = minutes.length;
  const seen = Array(count).fill(false);
  let best = Infinity;
  const go = (place, left, sum) => {
    if (sum >= best) return;
    if (left === 0) best = Math.min(best, sum + minutes[place][0]);
    for (let next = 1; next < count; next++) {
      if (seen[next]) continue;
      seen[next] = true;
      go(next, left - 1, sum + minutes[place][next]);
      seen[next] = false;
    }
  };
  go(0, count - 1, 0);
  return best;
}

/** Runs put in order: proved at 12 stops, against a search that cuts off only what is already longer; improved at 40. */
export async function runOrders() {
  const { runorder } = await loadSource("src/functions/bindings/runorder.ts");
  showRow(["a day's stops in order", "search by turns", "function", "ratio", "bar"]);
  const few = strewn(12, 1);
  const exact = timed(3, {
    turns: () => everyTour(few.minutes),
    call: () => runorder(few.stops, few.minutes, 0.375),
  });
  const [turns, proved] = [fastest(exact.turns), fastest(exact.call)];
  const ms = (value) => `${value.toFixed(1)} ms`;
  showRow(["runorder, 12 stops, proved", ms(turns), ms(proved), (turns / proved).toFixed(1), "under 500 ms"]);
  for (const [stopCount, name, bar] of [
    [20, "20 stops, proved", "under 3000 ms"],
    [40, "40 stops", "under 500 ms"],
    [100, "100 stops", ""],
  ]) {
    const { stops, minutes } = strewn(stopCount, 2);
    const took = fastest(timed(3, { call: () => runorder(stops, minutes, 0.375) }).call);
    showRow([`runorder, ${name}`, "", ms(took), "", bar]);
  }
}
