import { sectionKinds } from "@oncethrough/engine/section/kinds";
import { type KeyboardEvent, useEffect, useRef } from "react";
import { addWords, placeWords } from "#state/section-edits";
import { useBench } from "./use-bench.ts";

/** Which kind of section is to stand at a place of the airflow; each with a line on what it is for. */
export function KindDialog({ at }: { at: number }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const { duty, unit } = useBench((bench) => bench.sound!.job);
  const { sections } = unit;
  const { addAt, addSection } = useBench((bench) => bench.actions);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog
      ref={dialog}
      className="dialog kind-dialog"
      aria-label="add a section"
      onClose={() => addAt(undefined)}
      onKeyDown={onKeyDown}
    >
      <h2>
        Add a section <small>{placeWords(sections, at)}</small>
      </h2>
      <ul>
        {sectionKinds.map(({ name, meaning }) => {
          const words = addWords(duty, sections, at, name);
          return (
            <li key={name} className={words?.weight ?? ""}>
              <button
                type="button"
                onClick={() => {
                  addAt(undefined);
                  addSection(at, name);
                }}
              >
                <strong>{name}</strong> <span className="kind-what">{meaning}</span>
                {words === undefined ? null : (
                  <small>
                    <span aria-hidden="true">{words.weight === "impossible" ? "◆" : "△"}</span> {words.words}
                  </small>
                )}
              </button>
            </li>
          );
        })}
      </ul>
      <p className="dialog-foot">
        <button type="button" onClick={() => addAt(undefined)}>
          cancel
        </button>
      </p>
    </dialog>
  );
}

/** Arrows go from kind to kind, as in any list. */
function onKeyDown(event: KeyboardEvent<HTMLDialogElement>): void {
  const by = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
  if (by === 0) return;
  const buttons = [...event.currentTarget.querySelectorAll<HTMLButtonElement>("li button")];
  const next = buttons[buttons.indexOf(document.activeElement as HTMLButtonElement) + by];
  event.preventDefault();
  next?.focus();
}
