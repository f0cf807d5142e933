import type { Work } from "#view/use-work";
import "./work-words.css";
import type { Results } from "#work/task";

interface WordsProps {
  readonly work: Work<keyof Results>;
  readonly isStale: boolean;
  /** What is done, where it is not a search. */
  readonly doing?: string;
}

/** How long work stands: how far it is, with a hand on it; what went wrong. */
export function WorkWords({ work, isStale, doing }: WordsProps) {
  const { now, again, stop } = work;
  if (now === undefined || now.is === "done") return null;
  if (now.is === "under way") {
    return (
      <p className="work-words">
        <progress aria-label={doing ?? "looking for alternatives"} max={1} value={now.share} />
        {doing ?? (isStale ? "looking again; the list below is of the job before" : "looking")}
        <button type="button" onClick={stop}>
          stop
        </button>
      </p>
    );
  }
  return (
    <p className="work-words" role="alert">
      {now.is === "failed" ? (
        <span className="failing">
          <span aria-hidden="true">◆</span> nothing found: {now.problem}
        </span>
      ) : (
        "stopped"
      )}
      <button type="button" onClick={again}>
        {doing === undefined ? "look again" : "once more"}
      </button>
    </p>
  );
}
