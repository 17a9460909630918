import { whenPaneIsShown } from "../../../src/excel/shell/whenPaneIsShown";

/** A page as the shell sees it: its size, its visibility, and what is told when they change. */
function page(innerWidth: number, visibilityState: string, hasAddin = true) {
  const listeners = new Set<() => void>();
  let resized: () => void = () => undefined;
  let opened: (message: { visibilityMode: string }) => void = () => undefined;
  const fake = {
    shown: 0,
    observed: false,
    listeners,
    resize(width: number) {
      (globalThis as unknown as { window: { innerWidth: number } }).window.innerWidth = width;
      if (fake.observed) resized();
    },
    turnVisible() {
      (globalThis as unknown as { document: { visibilityState: string } }).document.visibilityState = "visible";
      for (const listener of [...listeners]) listener();
    },
    open: (visibilityMode: string) => opened({ visibilityMode }),
  };
  Object.assign(globalThis, {
    window: { innerWidth, innerHeight: 600 },
    document: {
      visibilityState,
      documentElement: {},
      addEventListener: (_: string, listener: () => void) => listeners.add(listener),
      removeEventListener: (_: string, listener: () => void) => listeners.delete(listener),
    },
    ResizeObserver: class {
      constructor(callback: () => void) {
        resized = callback;
      }
      observe(): void {
        fake.observed = true;
      }
      disconnect(): void {
        fake.observed = false;
      }
    },
    Office: {
      VisibilityMode: { taskpane: "Taskpane", hidden: "Hidden" },
      addin: hasAddin
        ? {
            onVisibilityModeChanged(handler: typeof opened) {
              opened = handler;
              return Promise.resolve(() => Promise.resolve());
            },
          }
        : undefined,
    },
  });
  whenPaneIsShown(() => {
    fake.shown += 1;
  });
  return fake;
}

afterEach(() => {
  for (const name of ["window", "document", "ResizeObserver", "Office"]) Reflect.deleteProperty(globalThis, name);
});

test("a page that was opened straight away is shown at once", () => {
  expect(page(320, "visible").shown).toBe(1);
});

test("a page that only calculates is not shown", () => {
  const fake = page(0, "visible");
  fake.resize(0);
  fake.open("Hidden");
  expect(fake.shown).toBe(0);
});

test("it is shown when the host says that the pane is opened", () => {
  const fake = page(0, "hidden");
  fake.open("Taskpane");
  expect(fake.shown).toBe(1);
});

test("it is shown when the page gets a size, where the host says nothing", () => {
  const fake = page(0, "visible", false);
  fake.resize(320);
  expect(fake.shown).toBe(1);
});

test("it is shown when a sized page turns visible", () => {
  const fake = page(320, "hidden", false);
  expect(fake.shown).toBe(0);
  fake.turnVisible();
  expect(fake.shown).toBe(1);
});

test("it is shown once, and nothing is watched afterwards", () => {
  const fake = page(0, "visible");
  fake.open("Taskpane");
  fake.open("Hidden");
  fake.open("Taskpane");
  fake.resize(400);
  expect([fake.shown, fake.observed, fake.listeners.size]).toEqual([1, false, 0]);
});
