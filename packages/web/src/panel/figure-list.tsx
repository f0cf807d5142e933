import { useId } from "react";
import { type Figure, printFigure } from "#state/figures";
import { useBench } from "#view/use-bench";

/** What follows from duty and choices; a figure whose working is known opens it. */
export function FigureList({ figures }: { figures: readonly Figure[] }) {
  return (
    <section aria-label="what follows">
      <h3>What follows</h3>
      <div className="rows">
        {figures.map((figure) =>
          figure.working === undefined ? (
            <div key={figure.key} className="figure" data-figure={figure.key} tabIndex={-1}>
              <span>{figure.name}</span>
              <strong>{figure.value}</strong>
            </div>
          ) : (
            <WorkedFigure key={figure.key} figure={figure} />
          ),
        )}
      </div>
    </section>
  );
}

function WorkedFigure({ figure }: { figure: Figure }) {
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
      {isOpen ? <Working id={id} figure={figure} /> : null}
    </>
  );
}

/** The arithmetic behind a figure: equation, values put in, result, source. */
function Working({ id, figure }: { id: string; figure: Figure }) {
  const system = useBench((bench) => bench.system);
  const working = figure.working;
  if (working === undefined) return null;
  return (
    <div id={id} className="working">
      <p className="equation">{working.equation}</p>
      <table>
        <caption className="unseen">values put in</caption>
        <tbody>
          {working.terms.map((term) => (
            <tr key={term.symbol}>
              <th scope="row">{term.symbol}</th>
              <td>{term.name}</td>
              <td className="number">{printFigure(term.value, term.quantity, system)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">=</th>
            <td>{working.name}</td>
            <td className="number">{printFigure(working.result, working.quantity, system)}</td>
          </tr>
        </tfoot>
      </table>
      <p className="quiet">{working.source}; worked in SI, printed in the units of the page</p>
    </div>
  );
}
