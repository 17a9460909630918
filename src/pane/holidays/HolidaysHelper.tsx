import { Button, Field, Select, makeStyles, tokens } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { ymdFromSerial } from "../../domain/dates/ymdFromSerial";
import { sayProblem } from "../../domain/wording";
import { GoToCell } from "../frame/GoToCell";
import { usePane } from "../frame/usePane";
import { sayCount } from "../sayCount";
import { sayDay } from "../sayDay";
import { addClosedDays } from "./addClosedDays";
import { findClosedDays } from "./findClosedDays";
import { holidayPlaces } from "./holidayPlaces";
import { listedHolidays } from "./listedHolidays";

const useStyles = makeStyles({
  choices: { display: "flex", flexWrap: "wrap", gap: tokens.spacingHorizontalS },
  place: { flexGrow: 1, minWidth: "140px" },
  year: { minWidth: "92px" },
  list: { margin: `${tokens.spacingVerticalS} 0`, paddingLeft: tokens.spacingHorizontalXL, overflowWrap: "anywhere" },
  note: { margin: `${tokens.spacingVerticalXS} 0`, color: tokens.colorNeutralForeground2 },
  add: { minHeight: "24px", maxWidth: "100%", whiteSpace: "normal" },
});

/** The public holidays of a place, and those that the workbook's closed days lack with a way to add them. */
export function HolidaysHelper() {
  const styles = useStyles();
  const { state, actions } = usePane();
  const { read, asOf } = state;
  const [placeName, setPlaceName] = useState<string | null>(null);
  const [years, setYears] = useState<{ readonly first: number; readonly last: number } | null>(null);
  const place = holidayPlaces.find(({ name }) => name === placeName) ?? null;
  const now = ymdFromSerial(asOf).year;
  const within = (year: number): number =>
    place === null ? year : Math.min(place.lastYear, Math.max(place.firstYear, year));
  const first = within(years?.first ?? now);
  const last = Math.max(first, within(years?.last ?? now));
  const holidays = useMemo(
    () => (placeName === null || read === null ? null : listedHolidays(placeName, first, last, read.workbook)),
    [placeName, first, last, read],
  );
  const table = useMemo(() => (read === null ? null : findClosedDays(read.workbook)), [read]);
  if (read === null) return null;

  const days = holidays?.ok === true ? holidays.value : [];
  const missing = days.filter(({ isListed }) => !isListed);
  const target = table === null ? "a new table ClosedDays" : table.area.name;
  const add = async (): Promise<void> => {
    const label = `${sayCount(missing.length, "closed day", "closed days")} added to ${target}`;
    const step = addClosedDays(missing, table, read.workbook);
    await (step.how === "write" ? actions.write(label, step.edits) : actions.build(label, step.plan));
  };
  const yearOptions =
    place === null
      ? []
      : Array.from({ length: place.lastYear - place.firstYear + 1 }, (_, index) => place.firstYear + index);
  return (
    <>
      <div className={styles.choices}>
        <Field label="Public holidays of" className={styles.place}>
          <Select value={placeName ?? ""} onChange={(_, { value }) => setPlaceName(value === "" ? null : value)}>
            <option value="">Choose a place</option>
            {holidayPlaces.map(({ name }) => (
              <option key={name}>{name}</option>
            ))}
          </Select>
        </Field>
        {place !== null && (
          <>
            <Field label="First year" className={styles.year}>
              <Select
                value={String(first)}
                onChange={(_, { value }) => setYears({ first: Number(value), last: Math.max(last, Number(value)) })}
              >
                {yearOptions.map((year) => (
                  <option key={year}>{year}</option>
                ))}
              </Select>
            </Field>
            <Field label="Last year" className={styles.year}>
              <Select
                value={String(last)}
                onChange={(_, { value }) => setYears({ first: Math.min(first, Number(value)), last: Number(value) })}
              >
                {yearOptions.map((year) => (
                  <option key={year}>{year}</option>
                ))}
              </Select>
            </Field>
          </>
        )}
      </div>
      {holidays?.ok === false && <p className={styles.note}>{sayProblem(holidays.problem)}</p>}
      {days.length > 0 && (
        <>
          <ul className={styles.list}>
            {days.map(({ day, name, isListed }) => (
              <li key={`${day} ${name}`}>{`${sayDay(day)}, ${name}${isListed ? " (in the closed days)" : ""}`}</li>
            ))}
          </ul>
          {missing.length > 0 && (
            <Button className={styles.add} onClick={() => void add()}>
              {`Add the ${missing.length === days.length ? "" : `${missing.length} missing of `}${days.length} days to ${target}`}
            </Button>
          )}
          <p className={styles.note}>
            {missing.length === 0 && "All of them are in the closed days. "}
            {table === null ? (
              "The workbook has no table of closed days yet; it comes on a sheet of its own."
            ) : (
              <>
                The closed days stand at <GoToCell at={table.at} sheetName={table.sheet.name} />; what is filled there
                stays as it is.
              </>
            )}{" "}
            States, towns and lenders close on days of their own, and single days are added at short notice: what the
            lender says decides.
          </p>
        </>
      )}
    </>
  );
}
