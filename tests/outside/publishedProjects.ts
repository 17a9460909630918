import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Project } from "../../src/domain/plan/project";

const reference = join(__dirname, "../../../shared/reference");

/** Whether the collected instances are there; they carry no clear licence, so they are read where they lie and never copied. */
export function areInstancesThere(folder: "psplib" | "jobshop" | "tsplib"): boolean {
  return existsSync(join(reference, folder));
}

/** A file of the collected instances as text. */
export function instanceText(folder: "psplib" | "jobshop" | "tsplib", file: string): string {
  return readFileSync(join(reference, folder, file), "utf8");
}

const figures = (line: string | undefined): number[] => (line ?? "").trim().split(/\s+/).map(Number);

/** A project of PSPLIB in its .sm format: 30 activities and two without length, four resources. */
export function psplibProject(name: string): Project {
  const lines = instanceText("psplib", `${name}.sm`).split(/\r?\n/);
  const lineAfter = (heading: string): number => lines.findIndex((line) => line.startsWith(heading));
  const precedences = lineAfter("jobnr.    #modes") + 1;
  const requests = lineAfter("jobnr. mode") + 2;
  const count = lines.slice(precedences).findIndex((line) => line.startsWith("*"));
  const before: number[][] = Array.from({ length: count }, () => []);
  for (let index = 0; index < count; index++) {
    const [, , , ...successors] = figures(lines[precedences + index]);
    for (const successor of successors) before[successor - 1]!.push(index);
  }
  const activities = before.map((others, index) => {
    const [, , length, ...needs] = figures(lines[requests + index]);
    return { length: length!, releasedAt: 0, before: others, needs };
  });
  return { activities, capacities: figures(lines[lineAfter("RESOURCEAVAILABILITIES") + 2]) };
}

/** A job shop: every job's steps follow one another, every machine does one at a time. */
export function jobShopProject(name: string): Project {
  const lines = instanceText("jobshop", `${name}.jss`)
    .split(/\r?\n/)
    .filter((line) => line.trim() !== "" && !line.startsWith("#"));
  const [jobs, machines] = figures(lines[0]) as [number, number];
  const activities = Array.from({ length: jobs }, (_, job) => {
    const line = figures(lines[1 + job]);
    return Array.from({ length: machines }, (__, step) => ({
      length: line[2 * step + 1]!,
      releasedAt: 0,
      before: step === 0 ? [] : [job * machines + step - 1],
      needs: Array.from({ length: machines }, (___, machine) => (machine === line[2 * step] ? 1 : 0)),
    }));
  });
  return { activities: activities.flat(), capacities: new Array<number>(machines).fill(1) };
}
