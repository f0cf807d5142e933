import { lazy, Suspense, useId, useRef, useState } from "react";
import { isDirty } from "#state/bench-state";
import { errorsOf } from "#state/sound-job";
import { useBench } from "#view/use-bench";
import { useSheet } from "#view/use-sheet";
import { useVariants } from "#view/use-variants";
import "./header-bar.css";
import type { JobStore } from "./job-store.ts";
import { SystemSwitch } from "./system-switch.tsx";

const StepList = lazy(() => import("./step-list.tsx"));

/** Whose unit this is, where its text is stored, and what can be done with the whole of it. */
export function HeaderBar({ store }: { store: JobStore }) {
  const duty = useBench((bench) => bench.sound?.job.duty);
  return (
    <header className="header-bar">
      <h1>{duty?.tag ?? "no sound job"}</h1>
      <p className="whose">
        {duty?.customer === "" ? null : <span>{duty?.customer}</span>}
        {duty?.service === "" ? null : <span className="quiet">{duty?.service}</span>}
      </p>
      <FileWords />
      <Steps />
      <FileHands store={store} />
      <VariantHand />
      <SystemSwitch />
    </header>
  );
}

function FileWords() {
  const name = useBench((bench) => bench.file.name);
  const dirty = useBench(isDirty);
  const errors = useBench((bench) => errorsOf(bench.reading).length);
  return (
    <p className="file-words">
      <span className="quiet">{name}</span>
      {dirty ? (
        <span className="dirty">
          <span aria-hidden="true">●</span> not saved
        </span>
      ) : (
        <span className="quiet">saved</span>
      )}
      {errors > 0 ? (
        <span className="failing">
          <span aria-hidden="true">◆</span> {errors} {errors === 1 ? "error" : "errors"} in the text
        </span>
      ) : null}
    </p>
  );
}

function Steps() {
  const { undo, redo } = useBench((bench) => bench.actions);
  const back = useBench((bench) => bench.history.past.at(-1)?.name);
  const forward = useBench((bench) => bench.history.future.at(-1)?.name);
  const [isOpen, setOpen] = useState(false);
  const opener = useRef<HTMLButtonElement>(null);
  const id = useId();
  const close = () => {
    setOpen(false);
    opener.current?.focus();
  };
  return (
    <div className="steps">
      <button type="button" disabled={back === undefined} onClick={undo} title={back ?? "nothing to undo"}>
        undo
      </button>
      <button type="button" disabled={forward === undefined} onClick={redo} title={forward ?? "nothing to redo"}>
        redo
      </button>
      <button
        ref={opener}
        type="button"
        disabled={back === undefined && forward === undefined}
        aria-expanded={isOpen}
        aria-controls={id}
        onClick={() => setOpen(!isOpen)}
      >
        steps
      </button>
      {isOpen ? (
        <Suspense fallback={null}>
          <StepList id={id} onClose={close} />
        </Suspense>
      ) : null}
    </div>
  );
}

function VariantHand() {
  const lay = useSheet((sheets) => sheets.lay);
  const { variants } = useVariants();
  return (
    <p className="steps">
      <button type="button" onClick={() => lay({ name: "variants" })}>
        variants{variants.length === 0 ? "" : ` ${variants.length}`}
      </button>
    </p>
  );
}

function FileHands({ store }: { store: JobStore }) {
  const lay = useSheet((sheets) => sheets.lay);
  const dirty = useBench(isDirty);
  return (
    <p className="steps">
      <button type="button" onClick={() => lay({ name: "a new unit" })}>
        new
      </button>
      <button type="button" onClick={() => lay({ name: "open a job" })}>
        open
      </button>
      <button type="button" onClick={store.save} disabled={!dirty && !store.canSaveAgain}>
        save
      </button>
    </p>
  );
}
