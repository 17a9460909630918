import { cameraThereSeconds } from "./cameraThereSeconds";
import { changeSecondsFor } from "./changeSecondsFor";
import { clearOfMeal } from "./clearOfMeal";
import { CHANGE, HAIR_MAKEUP, SHOT } from "./daySchedule";
import type { MealSpan, WaitKind } from "./daySchedule";
import type { DayState } from "./dayState";
import type { DayWork, WorkLook } from "./dayWork";
import { handedOverSeconds } from "./handedOverSeconds";
import type { Hold } from "./hold";
import { holdBack } from "./holdBack";
import type { PlacedLook } from "./placedLook";
import { pullBackFromShot } from "./pullBackFromShot";
import { soonestCamera } from "./soonestCamera";
import { soonestFree } from "./soonestFree";
import type { Station } from "./station";

/**
 * Places one more look after those that the day holds already: times its steps, writes them to `placed`, moves `state` on.
 *
 * This is the one place where the rules of the day stand. Each step begins as soon as its talents, its resource
 * and what must come before are free, clear of a meal that is already placed.
 */
export function placeLook(
  work: DayWork,
  state: DayState,
  index: number,
  meal: MealSpan | null,
  placed: PlacedLook,
): void {
  const look = work.looks[index]!;
  const changeSeconds = changeSecondsFor(look, state.lastLookOf);
  waitForTalents(work, state, look, placed.hold);
  if (look.makeupFirst) prepare(placed, HAIR_MAKEUP, state.chairs, "chair", look.hairMakeupSeconds, index, meal);
  if (changeSeconds > 0) waitForPieces(work, state, look, meal, placed.hold);
  prepare(placed, CHANGE, state.dressers, "dresser", changeSeconds, index, meal);
  if (!look.makeupFirst) prepare(placed, HAIR_MAKEUP, state.chairs, "chair", look.hairMakeupSeconds, index, meal);
  shoot(work, state, look, meal, placed);
  moveOn(state, look, index, placed);
}

function waitForTalents(work: DayWork, state: DayState, look: WorkLook, hold: Hold): void {
  startHold(hold, work.callSeconds, "call");
  holdBack(hold, look.thereSeconds, "arrival", -1, look.lastToArrive);
  for (const talent of look.talents)
    holdBack(hold, state.talentFreeSeconds[talent]!, "talent", state.lastLookOf[talent]!, talent);
}

function waitForPieces(work: DayWork, state: DayState, look: WorkLook, meal: MealSpan | null, hold: Hold): void {
  if (look.pieces.length === 0) return;
  for (const piece of look.pieces)
    holdBack(hold, handedOverSeconds(work, state, look, piece, meal), "piece", state.pieceLookOf[piece]!);
}

function startHold(hold: Hold, untilSeconds: number, kind: WaitKind): void {
  hold.untilSeconds = untilSeconds;
  hold.kind = kind;
  hold.look = hold.talent = -1;
}

function prepare(
  placed: PlacedLook,
  step: number,
  resource: Station,
  kind: WaitKind,
  lengthSeconds: number,
  index: number,
  meal: MealSpan | null,
): void {
  const { hold } = placed;
  if (lengthSeconds === 0) {
    placed.station[step] = -1;
    return writeStep(placed, step, 0);
  }
  const unit = soonestFree(resource);
  placed.station[step] = unit;
  holdBack(hold, resource.freeAtSeconds[unit]!, kind, resource.lastLook[unit]!);
  holdBack(hold, clearOfMeal(hold.untilSeconds, lengthSeconds, meal), "meal", -1);
  writeStep(placed, step, lengthSeconds);
  holdBack(hold, placed.untilSeconds[step]!, "preparation", index);
}

function shoot(work: DayWork, state: DayState, look: WorkLook, meal: MealSpan | null, placed: PlacedLook): void {
  const { cameras } = state;
  const { hold } = placed;
  const camera = soonestCamera(cameras, look.set, work.crossingSeconds, meal);
  placed.station[SHOT] = camera;
  if (look.shotAtSeconds !== null) {
    startHold(hold, look.shotAtSeconds, "shot at");
    writeStep(placed, SHOT, look.shootingSeconds);
    const { fromSeconds, untilSeconds, waitKind } = placed;
    return pullBackFromShot(fromSeconds, untilSeconds, waitKind, 0, look.makeupFirst, look.shotAtSeconds);
  }
  const there = cameraThereSeconds(cameras, camera, look.set, work.crossingSeconds, meal);
  holdBack(hold, cameras.freeAtSeconds[camera]!, "camera", cameras.lastLook[camera]!);
  holdBack(hold, there, "crossing", cameras.lastLook[camera]!);
  waitForPieces(work, state, look, meal, hold);
  for (const before of look.after) holdBack(hold, state.shotUntilSeconds[before]!, "after", before);
  holdBack(hold, state.previousShotFromSeconds, "order", state.previousShot);
  holdBack(hold, clearOfMeal(hold.untilSeconds, look.shootingSeconds, meal), "meal", -1);
  writeStep(placed, SHOT, look.shootingSeconds);
}

function writeStep(placed: PlacedLook, step: number, lengthSeconds: number): void {
  const { hold } = placed;
  placed.fromSeconds[step] = hold.untilSeconds;
  placed.untilSeconds[step] = hold.untilSeconds + lengthSeconds;
  placed.waitKind[step] = hold.kind;
  placed.waitLook[step] = hold.look;
  placed.waitTalent[step] = hold.talent;
}

function moveOn(state: DayState, look: WorkLook, index: number, placed: PlacedLook): void {
  const { untilSeconds, station } = placed;
  occupy(state.chairs, station[HAIR_MAKEUP]!, untilSeconds[HAIR_MAKEUP]!, index);
  occupy(state.dressers, station[CHANGE]!, untilSeconds[CHANGE]!, index);
  occupy(state.cameras, station[SHOT]!, untilSeconds[SHOT]!, index);
  if (look.set >= 0) state.cameras.lastSet[station[SHOT]!] = look.set;
  const shotUntil = untilSeconds[SHOT]!;
  for (const talent of look.talents) {
    state.talentFreeSeconds[talent] = Math.max(state.talentFreeSeconds[talent]!, shotUntil);
    state.lastLookOf[talent] = index;
  }
  if (look.pieces.length > 0) wear(state, look, index, shotUntil);
  state.shotUntilSeconds[index] = shotUntil;
  state.previousShot = index;
  state.previousShotFromSeconds = placed.fromSeconds[SHOT]!;
  state.endSeconds = Math.max(state.endSeconds, shotUntil);
}

function occupy(resource: Station, unit: number, untilSeconds: number, index: number): void {
  if (unit < 0) return;
  resource.freeAtSeconds[unit] = Math.max(resource.freeAtSeconds[unit]!, untilSeconds);
  resource.lastLook[unit] = index;
}

function wear(state: DayState, { pieces }: WorkLook, index: number, shotUntilSeconds: number): void {
  for (const piece of pieces) {
    if (shotUntilSeconds < state.pieceUntilSeconds[piece]!) continue;
    state.pieceUntilSeconds[piece] = shotUntilSeconds;
    state.pieceLookOf[piece] = index;
  }
}
