import { useMemo } from "react";
import { notesAt, unmetOf, unsolvedOf } from "#state/findings";
import { useBench, useRating } from "#view/use-bench";
import { NoteRow } from "./note-row.tsx";
import { UnmetRow } from "./unmet-row.tsx";

/** Everything that is not met, over all conditions. */
export function UnmetList() {
  const book = useBench((bench) => bench.sound?.book);
  const solved = useBench((bench) => bench.solved);
  const { pickCondition } = useBench((bench) => bench.actions);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the book grows in place; `solved` says when
  const found = useMemo(
    () => (book === undefined ? undefined : { unmet: unmetOf(book), unsolved: unsolvedOf(book), tried: book.tried }),
    [book, solved],
  );
  const all = book?.job.conditions.length ?? 0;
  if (found === undefined) return null;
  const isDone = found.tried === all;
  return (
    <section className="part" aria-label="what is not met">
      <h2>
        Not met
        <small>{isDone ? `over ${all} conditions` : `${found.tried} of ${all} conditions solved`}</small>
      </h2>
      <ul className="findings">
        {found.unsolved.map((each) => (
          <li key={each.key} className="fails">
            <span className="sign" aria-hidden="true">
              ◆
            </span>
            <button type="button" onClick={() => pickCondition(each.key)}>
              <span>not solved: {each.name}</span>
              <small>{each.reason}</small>
            </button>
          </li>
        ))}
        {found.unmet.map((each) => (
          <UnmetRow key={`${each.section}: ${each.what}`} unmet={each} />
        ))}
      </ul>
      {isDone && found.unmet.length + found.unsolved.length === 0 ? (
        <p className="quiet">every set point and share that the duty asks is held</p>
      ) : null}
    </section>
  );
}

/** What is worth minding at the condition in hand, over all sections. */
export function NotesHere() {
  const book = useBench((bench) => bench.sound?.book);
  const rating = useRating();
  const notes = useMemo(
    () => (book === undefined || rating === undefined ? [] : notesAt(book, rating)),
    [book, rating],
  );
  if (rating === undefined || notes.length === 0) return null;
  return (
    <section className="part" aria-label="to mind here">
      <h2>
        To mind<small>{rating.condition.name}</small>
      </h2>
      <ul className="findings">
        {notes.map((note) => (
          <NoteRow key={`${note.section}: ${note.what}`} note={note} named />
        ))}
      </ul>
    </section>
  );
}
