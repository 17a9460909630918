import type { CheckAction } from "../../../src/pane/check/CheckAction";
import { checkReducer, initialCheckState } from "../../../src/pane/check/checkReducer";

const after = (...actions: readonly CheckAction[]) => actions.reduce(checkReducer, initialCheckState);

test("opening a preview opens its group, and closing it leaves the group open", () => {
  const previewed = after(
    { type: "group opened", groupId: "g", isOpen: false },
    { type: "preview opened", groupId: "g" },
  );
  expect(previewed).toMatchObject({ previewOf: "g", isOpen: { g: true } });
  expect(checkReducer(previewed, { type: "preview closed" })).toMatchObject({ previewOf: null, isOpen: { g: true } });
});

test("a reason belongs to one finding: another finding starts blank, and a reason without a finding is dropped", () => {
  const typed = after({ type: "ignore begun", findingId: "a" }, { type: "reason typed", reason: "agreed" });
  expect(typed.ignoring).toEqual({ findingId: "a", reason: "agreed" });
  expect(checkReducer(typed, { type: "ignore begun", findingId: "b" }).ignoring).toEqual({
    findingId: "b",
    reason: "",
  });
  expect(checkReducer(typed, { type: "ignore ended" }).ignoring).toBeNull();
  expect(after({ type: "reason typed", reason: "x" }).ignoring).toBeNull();
});

test("more of a group are shown without touching the others", () => {
  expect(
    after({ type: "more shown", groupId: "a", shown: 58 }, { type: "more shown", groupId: "b", shown: 20 }).shown,
  ).toEqual({
    a: 58,
    b: 20,
  });
});
