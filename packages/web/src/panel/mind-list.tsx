import { useMemo } from "react";
import { notesAt, unmetOf } from "#state/findings";
import { useBench, useRating } from "#view/use-bench";
import { NoteRow } from "./note-row.tsx";
import { UnmetRow } from "./unmet-row.tsx";

/** What to mind about one section, or about the unit as a whole. */
export function MindList({ section }: { section: string }) {
  const book = useBench((bench) => bench.sound?.book);
  const solved = useBench((bench) => bench.solved);
  const rating = useRating();
  // biome-ignore lint/correctness/useExhaustiveDependencies: the book grows in place; `solved` says when
  const unmet = useMemo(
    () => (book === undefined ? [] : unmetOf(book).filter((each) => each.section === section)),
    [book, section, solved, rating],
  );
  const notes = useMemo(
    () =>
      book === undefined || rating === undefined
        ? []
        : notesAt(book, rating).filter((note) => note.section === section),
    [book, section, rating],
  );
  return (
    <section aria-label="what to mind">
      <h3>What to mind</h3>
      {unmet.length + notes.length === 0 ? <p className="quiet">nothing at this condition</p> : null}
      <ul className="findings">
        {unmet.map((each) => (
          <UnmetRow key={each.what} unmet={each} />
        ))}
        {notes.map((note) => (
          <NoteRow key={note.what} note={note} named={false} />
        ))}
      </ul>
    </section>
  );
}
