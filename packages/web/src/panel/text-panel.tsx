import type { Problem } from "@oncethrough/engine/form/problem";
import { lazy, Suspense, useCallback, useRef } from "react";
import { errorsOf } from "#state/sound-job";
import { useBench } from "#view/use-bench";
import type { CodeEditor } from "./code-editor.ts";
import { problemSpan } from "./problem-place.ts";
import "./text-panel.css";

const CodeField = lazy(() => import("./code-field.tsx"));

/** The job as text, editable, with what is wrong in it. */
export function TextPanel() {
  const name = useBench((bench) => bench.file.name);
  const editor = useRef<CodeEditor | undefined>(undefined);
  const onReady = useCallback((ready: CodeEditor | undefined) => {
    editor.current = ready;
  }, []);
  const goTo = useCallback((offset: number) => editor.current?.moveTo(offset), []);
  return (
    <section className="part text-panel" aria-label="job text">
      <h2>
        Job text<small>{name}</small>
      </h2>
      <Suspense fallback={<WaitingText />}>
        <CodeField onReady={onReady} />
      </Suspense>
      <ProblemList goTo={goTo} />
    </section>
  );
}

/** The text as it stands until the editor has come. */
function WaitingText() {
  const text = useBench((bench) => bench.text);
  return <pre className="code-field waiting">{text}</pre>;
}

/** Everything that is wrong in the text, each with its place; a click leads there. */
function ProblemList({ goTo }: { goTo: (offset: number) => void }) {
  const text = useBench((bench) => bench.text);
  const reading = useBench((bench) => bench.reading);
  const errors = errorsOf(reading);
  return (
    <div aria-live="polite">
      {errors.length === 0 ? null : (
        <ul className="findings" aria-label="errors in the text">
          {errors.map((problem) => (
            <li key={`${problem.line}:${problem.column}:${problem.problem}`} className="fails">
              <span className="sign" aria-hidden="true">
                ◆
              </span>
              <button type="button" onClick={() => goTo(problemSpan(text, problem).from)}>
                <span>
                  line {problem.line}, column {problem.column}: {problem.field === "" ? "" : `${problem.field}: `}
                  {problem.problem}
                </span>
                <small>{hintOf(problem)}</small>
              </button>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

function hintOf(problem: Problem): string {
  const allowed = problem.allowed === "" ? "" : `allowed: ${problem.allowed}`;
  return problem.nearest === undefined ? allowed : `${allowed}; did you mean “${problem.nearest}”?`;
}
