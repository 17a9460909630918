import { answered } from "./answered";
import type { Model, RangeModel } from "./excelModels";
import { type FakePicture, type FakeSheet, hostError } from "./fakeWorkbook";

/** The usual sizes of a row and a column, in points. */
const ROW_POINTS = 15;
const COLUMN_POINTS = 48;

/** What the strict fake lends: how a command waits for the sync, and what stands behind an object. */
interface LentParts<State> {
  readonly queue: (state: State, command: () => void) => void;
  readonly model: (state: State) => Model;
}

/** The shapes of a sheet as the collection holds them. */
export function shapeModels({ pictures }: FakeSheet): object[] {
  return pictures.map(({ row, column, rowCount, drawn, ...shape }) => ({
    ...shape,
    drawn,
    top: row * ROW_POINTS,
    left: column * COLUMN_POINTS,
    width: COLUMN_POINTS,
    height: rowCount * ROW_POINTS,
  }));
}

/** Pictures as the object model has them, and the sizes of rows and columns that tell where they lie. */
export function pictureBehaviours<State>({
  queue,
  model,
}: LentParts<State>): Record<string, Record<string, (state: State, args: unknown[]) => unknown>> {
  const later = <T>(state: State, work: () => T) => answered((command) => queue(state, command), work);
  const range = (state: State) => model(state) as unknown as RangeModel;
  return {
    Shape: {
      getAsImage: (state, [format]) =>
        later(state, () => {
          const { type, drawn } = model(state) as unknown as FakePicture;
          if (type !== "Image" && format === "SVG") throw hostError("InvalidArgument", "The argument is invalid");
          return drawn;
        }),
    },
    Range: {
      getRowProperties: (state) =>
        later(state, () =>
          Array.from({ length: range(state).rowCount }, () => ({
            rowHidden: false,
            format: { rowHeight: ROW_POINTS },
          })),
        ),
      getColumnProperties: (state) =>
        later(state, () =>
          Array.from({ length: range(state).columnCount }, () => ({
            columnHidden: false,
            format: { columnWidth: COLUMN_POINTS },
          })),
        ),
    },
  };
}
