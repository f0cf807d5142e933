import { lazy, Suspense, useId } from "react";
import { type Figure, figureRows } from "#state/figures";
import { TakeAway } from "#view/take-away.tsx";
import { useBench } from "#view/use-bench";

const WorkingBlock = lazy(() => import("./working-block.tsx"));

/** What follows from duty and choices; a figure whose working is known opens it. */
export function FigureList({ figures, kind }: { figures: readonly Figure[]; kind?: string }) {
  return (
    <section aria-label="what follows">
      <h3>What follows</h3>
      <TakeAway of="table" name="what follows" table={() => figureRows(figures)} />
      <div className="rows">
        {figures.map((figure) =>
          figure.working === undefined ? (
            <div key={figure.key} className="figure" data-figure={figure.key} tabIndex={-1}>
              <span>{figure.name}</span>
              <strong>{figure.value}</strong>
            </div>
          ) : (
            <WorkedFigure key={figure.key} figure={figure} kind={kind} />
          ),
        )}
      </div>
    </section>
  );
}

function WorkedFigure({ figure, kind }: { figure: Figure; kind: string | undefined }) {
  const id = useId();
  const isOpen = useBench((bench) => bench.openWorking === figure.key);
  const { toggleWorking } = useBench((bench) => bench.actions);
  return (
    <>
      <button
        type="button"
        className="figure worked"
        data-figure={figure.key}
        aria-expanded={isOpen}
        aria-controls={id}
        onClick={() => toggleWorking(figure.key)}
      >
        <span>{figure.name}</span>
        <strong>{figure.value}</strong>
      </button>
      <div id={id}>
        {isOpen && figure.working !== undefined ? (
          <Suspense fallback={<p className="quiet">one moment</p>}>
            <WorkingBlock working={figure.working} kind={kind} />
          </Suspense>
        ) : null}
      </div>
    </>
  );
}
