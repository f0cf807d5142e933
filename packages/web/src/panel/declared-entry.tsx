import type { Fields, GroupCheck } from "@oncethrough/engine/form/field";
import { readForm } from "@oncethrough/engine/form/read";
import { removeAt, spliceEdit } from "@oncethrough/engine/form/splice";
import { sectionKind } from "@oncethrough/engine/job/job";
import { useMemo, useState } from "react";
import { sectionPath } from "#state/bench-state";
import { type FieldRow, fieldRows } from "#state/field-rows";
import { useBench } from "#view/use-bench";
import "./declared-table.css";
import { FieldEditor } from "./field-editor.tsx";

const member = "declaredRating";

/** Takes a supplier's declared rating of a coil or fan into the job, all of its point at once; or takes it out again. */
export default function DeclaredEntry({ index }: { index: number }) {
  const kind = useBench((bench) => bench.sound?.job.unit.sections[index]?.kind) ?? "";
  const path = `${sectionPath(index)}.${member}`;
  const isGiven = useBench((bench) => bench.reading.places(path) !== undefined);
  const { editFields } = useBench((bench) => bench.actions);
  const [isOpen, setOpen] = useState(false);
  const field = sectionKind(kind)?.fields[member];
  if (field?.type !== "group") return null;
  if (isGiven) {
    return (
      <p className="declared-hand">
        <button
          type="button"
          className="act"
          onClick={() => editFields("declared rating taken out", [{ path, typed: undefined }])}
        >
          take the declared rating out
        </button>
      </p>
    );
  }
  return isOpen ? (
    <Entry key={kind} path={path} fields={field.fields} check={field.check} onClose={() => setOpen(false)} />
  ) : (
    <p className="declared-hand">
      <button type="button" className="act" onClick={() => setOpen(true)}>
        enter a supplier's declared rating
      </button>
    </p>
  );
}

interface EntryProps {
  readonly path: string;
  readonly fields: Fields;
  readonly check: GroupCheck | undefined;
  readonly onClose: () => void;
}

/** The point as the supplier states it, kept apart from the job until it is whole. */
function Entry({ path, fields, check, onClose }: EntryProps) {
  const [text, setText] = useState("{}\n");
  const catalogue = useBench((bench) => bench.catalogue);
  const { editFields } = useBench((bench) => bench.actions);
  const reading = useMemo(() => {
    const context = { component: catalogue.component, componentNames: catalogue.names };
    return readForm(text, fields, context, check);
  }, [text, fields, catalogue, check]);
  const rows = fieldRows(fields, "", reading, catalogue).filter((row) => row.row === "field");
  const needed = rows.filter((row) => !row.canOmit && row.typed === undefined).map(({ name }) => name);
  const loose = reading.problems.filter(({ path: at }) => !rows.some((row) => row.path === at));
  const edit = (at: string, typed: string) => {
    const value = typed.trim();
    if (value === "" && reading.places(at) === undefined) return;
    const splice = value === "" ? removeAt(text, at) : spliceEdit(text, at, value);
    if (splice.ok) setText(splice.text);
  };
  const enter = () => {
    const given = rows.filter((row) => row.typed !== undefined);
    const number = given.find((row) => row.path === "number")?.typed ?? "";
    editFields(
      `declared rating ${number}`,
      given.map((row) => ({ path: `${path}.${row.path}`, typed: row.typed })),
    );
    onClose();
  };
  return (
    <section className="declared-entry" aria-label="a supplier's declared rating">
      <h3>A supplier's declared rating</h3>
      <p className="quiet">as the supplier's submittal has it; ours will stand beside it, at its point</p>
      <div className="rows">
        {rows.map((row) => (
          <FieldEditor key={row.path} row={onlyTyped(row)} onEdit={edit} />
        ))}
      </div>
      {loose.map(({ problem }) => (
        <p key={problem} className="failing">
          <span aria-hidden="true">◆</span> {problem}
        </p>
      ))}
      {needed.length === 0 ? null : <p className="quiet">still needed: {needed.join(", ")}</p>}
      <p className="declared-foot">
        <button type="button" className="act" disabled={!reading.ok} onClick={enter}>
          write it into the job
        </button>
        <button type="button" className="act" onClick={onClose}>
          not now
        </button>
      </p>
    </section>
  );
}

/** What nobody has typed yet is no mistake yet. */
function onlyTyped(row: FieldRow): FieldRow {
  return row.typed === undefined ? { ...row, problems: [] } : row;
}
