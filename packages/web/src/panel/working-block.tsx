import type { EvaluatedWorking } from "@oncethrough/engine/unit/report";
import { printFigure, siFigure } from "#state/figures";
import { methodOfKind } from "#state/help-topic";
import { TakeAway } from "#view/take-away.tsx";
import { useBench } from "#view/use-bench";
import { useSheet } from "#view/use-sheet";
import { SourceLines } from "./source-lines.tsx";

interface WorkingProps {
  readonly working: EvaluatedWorking;
  /** Kind of the section; undefined for the unit as a whole. */
  readonly kind: string | undefined;
}

/** The arithmetic behind a figure: equation, values put in, result, source; the equation holds for the values in SI. */
export default function WorkingBlock({ working, kind }: WorkingProps) {
  const topic = kind === undefined ? undefined : methodOfKind(kind);
  const lay = useSheet((sheets) => sheets.lay);
  return (
    <div className="working" data-part="">
      <p className="equation">{working.equation}</p>
      <table>
        <caption className="unseen">values put in, and the result</caption>
        <tbody>
          {working.terms.map(({ symbol, name, value, quantity }) => (
            <ValueRow key={symbol} symbol={symbol} name={name} value={value} quantity={quantity} />
          ))}
        </tbody>
        <tfoot>
          <ValueRow symbol="=" name={working.name} value={working.result} quantity={working.quantity} />
        </tfoot>
      </table>
      <SourceLines source={working.source} />
      <p className="working-foot">
        {topic === undefined ? null : (
          <button type="button" className="act" onClick={() => lay({ name: "help", topic })}>
            how it is worked
          </button>
        )}
        <TakeAway of="table" name={`working of ${working.name}`} />
      </p>
    </div>
  );
}

interface ValueProps {
  readonly symbol: string;
  readonly name: string;
  readonly value: number;
  readonly quantity: EvaluatedWorking["quantity"];
}

/** A value as the page prints it, and below it as it goes into the equation. */
function ValueRow({ symbol, name, value, quantity }: ValueProps) {
  const system = useBench((bench) => bench.system);
  const shown = printFigure(value, quantity, system);
  const exact = siFigure(value, quantity);
  return (
    <tr>
      <th scope="row">{symbol}</th>
      <td>{name}</td>
      <td className="number">{shown}</td>
      <td className="number exact">{exact}</td>
    </tr>
  );
}
