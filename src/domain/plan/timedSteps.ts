import { cameraThereSeconds } from "./cameraThereSeconds";
import { changeSecondsFor } from "./changeSecondsFor";
import { clearOfMeal } from "./clearOfMeal";
import { CHANGE, HAIR_MAKEUP, SHOT, STEPS_A_LOOK } from "./daySchedule";
import type { DaySchedule, MealSpan, WaitKind } from "./daySchedule";
import type { DayWork, WorkLook } from "./dayWork";
import type { Hold } from "./hold";
import { holdBack } from "./holdBack";
import { openStation } from "./openStation";
import { pullBackFromShot } from "./pullBackFromShot";
import { soonestCamera } from "./soonestCamera";
import { soonestFree } from "./soonestFree";
import type { Station } from "./station";

/**
 * Times every step of the day in one pass, look after look in the order given, around a meal that is already placed.
 *
 * Each step begins as soon as its talents, its resource and what must come before are free. `order` names every
 * look once. Nothing outside is touched, so the same work can be timed in any number of orders.
 */
export function timedSteps(work: DayWork, order: readonly number[], meal: MealSpan | null): DaySchedule {
  const stepCount = work.looks.length * STEPS_A_LOOK;
  const fromSeconds = new Array<number>(stepCount).fill(0);
  const untilSeconds = new Array<number>(stepCount).fill(0);
  const waitKind = new Array<WaitKind>(stepCount).fill("call");
  const waitLook = new Array<number>(stepCount).fill(-1);
  const waitTalent = new Array<number>(stepCount).fill(-1);
  const station = new Array<number>(stepCount).fill(-1);

  const chairs = openStation(work.chairs, work.callSeconds);
  const dressers = openStation(work.dressers, work.callSeconds);
  const cameras = openStation(work.cameras, work.callSeconds);
  const talentFreeSeconds = new Array<number>(work.talentCount).fill(work.callSeconds);
  const lastLookOf = new Array<number>(work.talentCount).fill(-1);
  const hold: Hold = { untilSeconds: work.callSeconds, kind: "call", look: -1, talent: -1 };
  let previousShot = -1;
  let endSeconds = work.callSeconds;

  function waitForTalents(look: WorkLook): void {
    hold.untilSeconds = work.callSeconds;
    hold.kind = "call";
    hold.look = -1;
    hold.talent = -1;
    holdBack(hold, look.thereSeconds, "arrival", -1, look.lastToArrive);
    for (const talent of look.talents)
      holdBack(hold, talentFreeSeconds[talent]!, "talent", lastLookOf[talent]!, talent);
  }

  function placeStep(step: number, lengthSeconds: number): void {
    holdBack(hold, clearOfMeal(hold.untilSeconds, lengthSeconds, meal), "meal", -1);
    fromSeconds[step] = hold.untilSeconds;
    untilSeconds[step] = hold.untilSeconds + lengthSeconds;
    waitKind[step] = hold.kind;
    waitLook[step] = hold.look;
    waitTalent[step] = hold.talent;
  }

  function prepare(index: number, step: number, resource: Station, kind: WaitKind, lengthSeconds: number): void {
    const at = index * STEPS_A_LOOK + step;
    if (lengthSeconds === 0) {
      fromSeconds[at] = untilSeconds[at] = hold.untilSeconds;
      return;
    }
    const unit = soonestFree(resource);
    station[at] = unit;
    holdBack(hold, resource.freeAtSeconds[unit]!, kind, resource.lastLook[unit]!);
    placeStep(at, lengthSeconds);
    holdBack(hold, untilSeconds[at]!, "preparation", index);
  }

  function shoot(index: number, look: WorkLook): void {
    const at = index * STEPS_A_LOOK + SHOT;
    const camera = soonestCamera(cameras, look.set, work.crossingSeconds, meal);
    station[at] = camera;
    if (look.shotAtSeconds !== null) {
      hold.untilSeconds = look.shotAtSeconds;
      hold.kind = "shot at";
      hold.look = hold.talent = -1;
      fromSeconds[at] = look.shotAtSeconds;
      untilSeconds[at] = look.shotAtSeconds + look.shootingSeconds;
      waitKind[at] = "shot at";
      return;
    }
    holdBack(hold, cameras.freeAtSeconds[camera]!, "camera", cameras.lastLook[camera]!);
    const there = cameraThereSeconds(cameras, camera, look.set, work.crossingSeconds, meal);
    holdBack(hold, there, "crossing", cameras.lastLook[camera]!);
    for (const before of look.after) holdBack(hold, untilSeconds[before * STEPS_A_LOOK + SHOT]!, "after", before);
    if (previousShot >= 0) holdBack(hold, fromSeconds[previousShot * STEPS_A_LOOK + SHOT]!, "order", previousShot);
    placeStep(at, look.shootingSeconds);
  }

  function occupy(resource: Station, at: number, index: number): void {
    const unit = station[at]!;
    if (unit < 0) return;
    resource.freeAtSeconds[unit] = Math.max(resource.freeAtSeconds[unit]!, untilSeconds[at]!);
    resource.lastLook[unit] = index;
  }

  for (const index of order) {
    const look = work.looks[index]!;
    const first = index * STEPS_A_LOOK;
    const changeSeconds = changeSecondsFor(look, lastLookOf);
    waitForTalents(look);
    if (look.makeupFirst) prepare(index, HAIR_MAKEUP, chairs, "chair", look.hairMakeupSeconds);
    prepare(index, CHANGE, dressers, "dresser", changeSeconds);
    if (!look.makeupFirst) prepare(index, HAIR_MAKEUP, chairs, "chair", look.hairMakeupSeconds);
    shoot(index, look);
    if (look.shotAtSeconds !== null) {
      pullBackFromShot(fromSeconds, untilSeconds, waitKind, first, look.makeupFirst, look.shotAtSeconds);
    }

    occupy(chairs, first + HAIR_MAKEUP, index);
    occupy(dressers, first + CHANGE, index);
    occupy(cameras, first + SHOT, index);
    if (look.set >= 0) cameras.lastSet[station[first + SHOT]!] = look.set;
    const shotUntil = untilSeconds[first + SHOT]!;
    for (const talent of look.talents) {
      talentFreeSeconds[talent] = Math.max(talentFreeSeconds[talent]!, shotUntil);
      lastLookOf[talent] = index;
    }
    previousShot = index;
    endSeconds = Math.max(endSeconds, shotUntil);
  }
  return { fromSeconds, untilSeconds, waitKind, waitLook, waitTalent, station, meal, endSeconds };
}
