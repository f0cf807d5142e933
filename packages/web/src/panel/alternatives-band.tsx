import { isChosenCoil } from "@oncethrough/engine/design/choosable";
import { lazy, Suspense, useId, useState } from "react";
import { sectionIndex } from "#state/bench-state";
import { DrawnOrSaid } from "#view/drawn-or-said.tsx";
import { useBench } from "#view/use-bench";

const AlternativesPanel = lazy(() => import("./alternatives-panel.tsx"));

/** Where a coil or the fan is in hand: other ways to build it, looked for once somebody opens them. */
export function AlternativesBand() {
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  const index = useBench((bench) => sectionIndex(bench.picked));
  const section = useBench((bench) => (index === undefined ? undefined : bench.sound?.job.unit.sections[index]));
  const text = useBench((bench) => bench.sound?.text);
  const isFan = section?.behaviour.role === "fan";
  const what = isFan ? "fans" : section?.kind === "filter bank" ? "filters" : "coils";
  const hasOthers = what !== "coils" || isChosenCoil(section?.kind ?? "");
  if (index === undefined || section === undefined || !hasOthers) return null;
  return (
    <section className="part alternatives-band" aria-label="alternatives">
      <h2>
        <button
          type="button"
          className="alternatives-opener"
          aria-expanded={isOpen}
          aria-controls={id}
          onClick={() => setOpen(!isOpen)}
        >
          <span aria-hidden="true">{isOpen ? "▾" : "▸"}</span> Other {what} for this duty
        </button>
        <small>{section.name}</small>
      </h2>
      <div id={id}>
        {isOpen ? (
          <DrawnOrSaid what="the list of alternatives" attempt={`${index} ${text}`}>
            <Suspense fallback={<p className="quiet">one moment</p>}>
              <AlternativesPanel key={section.kind} index={index} />
            </Suspense>
          </DrawnOrSaid>
        ) : null}
      </div>
    </section>
  );
}
