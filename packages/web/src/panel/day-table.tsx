import { airStateFields } from "@oncethrough/engine/duty/air-state";
import { memberPath } from "@oncethrough/engine/form/path";
import { useMemo } from "react";
import { designDayRows } from "#state/enquiry";
import { type FieldRow, fieldRows } from "#state/field-rows";
import { useBench } from "#view/use-bench";
import { useEnquiry } from "#view/use-enquiry";
import { FieldEditor } from "./field-editor.tsx";

const measures = ["dryBulb", "wetBulb", "dewPoint", "relativeHumidity"] as const;
const heads = ["dry bulb", "wet bulb", "dew point", "humidity"] as const;
const { dryBulb, wetBulb, dewPoint, relativeHumidity } = airStateFields;
const dayFields = { dryBulb, wetBulb, dewPoint, relativeHumidity };

/** The four design days as a table: each by its dry bulb and one measure of moisture. */
export function DayTable() {
  return (
    <table className="day-table">
      <caption className="quiet">each day by its dry bulb and one of the others</caption>
      <thead>
        <tr>
          <th scope="col">
            <span className="unseen">day</span>
          </th>
          {heads.map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {designDayRows.map((day) => (
          <Day key={day.path} {...day} />
        ))}
      </tbody>
    </table>
  );
}

function Day({ path, name, usual }: (typeof designDayRows)[number]) {
  const catalogue = useBench((bench) => bench.catalogue);
  const reading = useEnquiry((desk) => desk.enquiry.reading);
  const answer = useEnquiry((desk) => desk.answer);
  const cells = useMemo(
    () => fieldRows(dayFields, path, reading, catalogue).filter((row) => row.row === "field"),
    [path, reading, catalogue],
  );
  const problem = reading.problems.find((each) => each.path === path);
  const cellOf = (measure: (typeof measures)[number]): FieldRow => {
    const found = cells.find((row) => row.path === memberPath(path, measure))!;
    // A word of one measure is told in its row; a cell says only what a day is usually known by.
    return {
      ...found,
      name: `${name}: ${found.name}`,
      fallback: measure === "dryBulb" || measure === usual ? "…" : "–",
    };
  };
  return (
    <>
      <tr>
        <th scope="row">{name}</th>
        {measures.map((measure) => (
          <td key={measure}>
            <FieldEditor
              row={cellOf(measure)}
              onEdit={(at, typed) => answer([{ path: at, typed: typed.trim() === "" ? undefined : typed.trim() }])}
            />
          </td>
        ))}
      </tr>
      {problem === undefined || cells.every((row) => row.typed === undefined) ? null : (
        <tr>
          <td colSpan={5} className="field-problem">
            <span aria-hidden="true">◆</span> {name}: {problem.problem}
          </td>
        </tr>
      )}
    </>
  );
}
