import { lazy, Suspense, useId, useState } from "react";
import { DrawnOrSaid } from "#view/drawn-or-said.tsx";
import { useBench } from "#view/use-bench";

const YearPanel = lazy(() => import("./year-panel.tsx"));

/** Every hour of the year: solved once somebody opens it. */
export function YearBand() {
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  const text = useBench((bench) => bench.sound?.text);
  if (text === undefined) return null;
  return (
    <section className="part year-band" aria-label="every hour of the year">
      <h2>
        <button
          type="button"
          className="year-opener"
          aria-expanded={isOpen}
          aria-controls={id}
          onClick={() => setOpen(!isOpen)}
        >
          <span aria-hidden="true">{isOpen ? "▾" : "▸"}</span> Every hour of the year
        </button>
        <small>energy, frost, what is not held; an hour picked is drawn in the airway</small>
      </h2>
      <div id={id}>
        {isOpen ? (
          <DrawnOrSaid what="the year" attempt={text}>
            <Suspense fallback={<p className="quiet">one moment</p>}>
              <YearPanel />
            </Suspense>
          </DrawnOrSaid>
        ) : null}
      </div>
    </section>
  );
}
