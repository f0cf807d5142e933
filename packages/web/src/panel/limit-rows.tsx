import { checkCoilLimits, coilLimitFields } from "@oncethrough/engine/design/coil-limits";
import { checkFanLimits, fanLimitFields } from "@oncethrough/engine/design/fan-limits";
import { filterLimitFields } from "@oncethrough/engine/design/filter-limits";
import type { Fields, GroupCheck } from "@oncethrough/engine/form/field";
import { readForm } from "@oncethrough/engine/form/read";
import { removeAt, spliceEdit } from "@oncethrough/engine/form/splice";
import { useMemo } from "react";
import { fieldRows } from "#state/field-rows";
import { useBench } from "#view/use-bench";
import type { AlternativesTask } from "#work/task";
import { FieldEditor } from "./field-editor.tsx";

const limitsOf: Readonly<Record<AlternativesTask["kind"], { fields: Fields; check?: GroupCheck }>> = {
  "coil alternatives": { fields: coilLimitFields, check: checkCoilLimits },
  "rated coil alternatives": { fields: coilLimitFields, check: checkCoilLimits },
  "fan alternatives": { fields: fanLimitFields, check: checkFanLimits },
  "filter alternatives": { fields: filterLimitFields },
};

interface LimitRowsProps {
  readonly kind: AlternativesTask["kind"];
  /** The limits as typed, a text of their own. */
  readonly text: string;
  readonly onEdit: (text: string, isSound: boolean) => void;
}

/** What alternatives may use and have to keep, typed like any other field. */
export function LimitRows({ kind, text, onEdit }: LimitRowsProps) {
  const catalogue = useBench((bench) => bench.catalogue);
  const read = useMemo(() => {
    const context = { component: catalogue.component, componentNames: catalogue.names };
    const { fields, check } = limitsOf[kind];
    return (of: string) => ({ fields, reading: readForm(of, fields, context, check) });
  }, [kind, catalogue]);
  const { fields, reading } = useMemo(() => read(text), [read, text]);
  const rows = fieldRows(fields, "", reading, catalogue).filter((row) => row.row === "field");
  const edit = (path: string, typed: string) => {
    const value = typed.trim();
    if (value === "" && reading.places(path) === undefined) return;
    const splice = value === "" ? removeAt(text, path) : spliceEdit(text, path, value);
    if (splice.ok) onEdit(splice.text, read(splice.text).reading.ok);
  };
  const loose = reading.problems.filter(({ path }) => !rows.some((row) => row.path === path));
  return (
    <details className="limits">
      <summary>
        limits
        {reading.ok ? null : <span className="failing"> ◆ one cannot be read</span>}
      </summary>
      <div className="limit-rows">
        {rows.map((row) => (
          <FieldEditor key={row.path} row={row} onEdit={edit} />
        ))}
      </div>
      {loose.map(({ problem }) => (
        <p key={problem} className="failing">
          {problem}
        </p>
      ))}
    </details>
  );
}
