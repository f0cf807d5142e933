import { type KeyboardEvent, useEffect, useMemo, useRef } from "react";
import { type StepWords, stepsInWords } from "#state/step-words";
import { useBench } from "#view/use-bench";
import "./step-list.css";

/** Every step by name with what it did to the job text; a click goes there, back or forward. */
export default function StepList({ id, onClose }: { id: string; onClose: () => void }) {
  const text = useBench((bench) => bench.text);
  const history = useBench((bench) => bench.history);
  const name = useBench((bench) => bench.file.name);
  const { stepTo } = useBench((bench) => bench.actions);
  const list = useRef<HTMLDivElement>(null);
  const steps = useMemo(() => stepsInWords(text, history), [text, history]);
  const done = history.past.length;
  useEffect(() => {
    list.current?.querySelector<HTMLElement>("[aria-current]")?.focus();
  }, []);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Escape") onClose();
    const by = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
    if (by === 0) return;
    event.preventDefault();
    const rows = [...(list.current?.querySelectorAll("button") ?? [])];
    rows[rows.indexOf(document.activeElement as HTMLButtonElement) + by]?.focus();
  };
  return (
    <section
      id={id}
      ref={list}
      className="step-list"
      aria-label="steps"
      onKeyDown={onKeyDown}
      onBlur={(event) => {
        const { relatedTarget: to } = event;
        const isOpener = to?.getAttribute("aria-controls") === id;
        if (to !== null && !isOpener && !event.currentTarget.contains(to)) onClose();
      }}
    >
      <ol>
        {steps.map((step) => (
          <li key={step.count} className={step.isDone ? "" : "undone"}>
            <button
              type="button"
              aria-current={step.count === done ? "step" : undefined}
              onClick={() => stepTo(step.count)}
            >
              <span className="step-name">
                {step.name}
                {step.isDone ? null : <small>undone</small>}
              </span>
              <Lines step={step} />
            </button>
          </li>
        ))}
        <li>
          <button type="button" aria-current={done === 0 ? "step" : undefined} onClick={() => stepTo(0)}>
            <span className="step-name">{name}, as opened</span>
          </button>
        </li>
      </ol>
    </section>
  );
}

function Lines({ step: { before, after } }: { step: StepWords }) {
  return (
    <span className="step-lines">
      {before.map((line, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: lines of a text may be the same
        <del key={place}>{line}</del>
      ))}
      {after.map((line, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: lines of a text may be the same
        <ins key={place}>{line}</ins>
      ))}
    </span>
  );
}
