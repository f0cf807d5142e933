import { lazy, Suspense, useEffect, useId, useRef } from "react";
import { type FindingLine, standingOf } from "#state/finding-lines";
import { basisWords, lineMargin, signs, valueWords } from "#state/finding-words";
import { useBench } from "#view/use-bench";
import { FixHint } from "./fix-hint.tsx";

const FindingDetail = lazy(() => import("./finding-detail.tsx"));

/** ms after which what is loaded above an open finding has taken its place. */
const settling = 400;

/** A finding as a line of a list: shape, rule, margin; value, limit and place below; all of it once it is open. */
export function FindingRow({ line, named }: { line: FindingLine; named: boolean }) {
  const id = useId();
  const row = useRef<HTMLLIElement>(null);
  const system = useBench((bench) => bench.system);
  const isOpen = useBench((bench) => bench.finding === line.key);
  const { pickFinding } = useBench((bench) => bench.actions);
  const standing = standingOf(line);
  useEffect(() => {
    if (!isOpen) return;
    showInPanel(row.current);
    const again = setTimeout(() => showInPanel(row.current), settling);
    return () => clearTimeout(again);
  }, [isOpen]);
  return (
    <li ref={row} className={`finding finding-${standing.replace(" ", "-")}${isOpen ? " finding-open" : ""}`}>
      <span className="sign" aria-hidden="true">
        {signs[standing]}
      </span>
      <div>
        <button
          type="button"
          aria-expanded={isOpen}
          aria-controls={id}
          onClick={() => pickFinding(isOpen ? undefined : line.key, line.index)}
        >
          <span>
            <span className="unseen">{standing}: </span>
            {line.rule}
          </span>
          <strong>{lineMargin(line)}</strong>
          <small>
            {named ? `${line.section}: ` : null}
            {valueWords(line, system)}
            <span className="basis">{basisWords(line)}</span>
          </small>
        </button>
        <div id={id}>
          {isOpen ? (
            <Suspense fallback={<p className="quiet">one moment</p>}>
              <FindingDetail line={line} />
            </Suspense>
          ) : (
            <FixHint line={line} />
          )}
        </div>
      </div>
    </li>
  );
}

/** Scrolls the panel beside the drawing, and nothing else, so far that the row stands in it. */
function showInPanel(row: Element | null): void {
  const panel = row?.closest(".part-panel");
  if (row === null || panel === null || panel === undefined) return;
  const [inside, around] = [row.getBoundingClientRect(), panel.getBoundingClientRect()];
  const foot = Math.min(around.bottom, window.innerHeight) - 160;
  if (inside.top < around.top || inside.top > foot) panel.scrollTop += inside.top - around.top - 24;
}
