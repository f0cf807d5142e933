import type { PlacedNote } from "@oncethrough/engine/unit/rating";
import { sectionPath } from "#state/bench-state";
import { useBench } from "#view/use-bench";

/** Something to mind; `named` says of which section it is, and leads there. */
export function NoteRow({ note, named }: { note: PlacedNote; named: boolean }) {
  return (
    <li className={note.weight}>
      <span className="sign" aria-hidden="true">
        {note.weight === "caution" ? "△" : "○"}
      </span>
      <span>
        {note.weight === "caution" ? <span className="unseen">caution: </span> : null}
        {named ? <SectionName name={note.section} /> : null}
        {note.what}
        {note.source === undefined ? null : <small>{note.source}</small>}
      </span>
    </li>
  );
}

function SectionName({ name }: { name: string }) {
  const index = useBench((bench) => bench.sound?.job.unit.sections.findIndex((section) => section.name === name) ?? -1);
  const { pick } = useBench((bench) => bench.actions);
  return (
    <button type="button" className="section-name" onClick={() => pick(sectionPath(index))}>
      {name}
    </button>
  );
}
