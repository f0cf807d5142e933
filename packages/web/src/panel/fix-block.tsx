import { type FindingLine, standingOf } from "#state/finding-lines";
import { shareText } from "#state/finding-words";
import { type FixFigures, fixCaveat, fixCosts, fixStep } from "#state/fix-words";
import { useBench } from "#view/use-bench";
import { useFix } from "#view/use-mending";

/** The smallest fix of a finding with what it costs, one click away; or how the search for it stands. */
export function FixBlock({ line }: { line: FindingLine }) {
  const standing = standingOf(line);
  const state = useFix(line);
  if (standing === "holds" || standing === "let go" || standing === "cannot tell") return null;
  if (!line.canMend) return <p className="quiet">no single field of the job mends it</p>;
  if (state === undefined) return <p className="quiet">smallest fix: its turn comes</p>;
  switch (state.is) {
    case "under way":
      return (
        <p className="quiet">
          smallest fix: looking <progress aria-label="looking for the smallest fix" max={1} value={state.share} />
        </p>
      );
    case "done":
      if (state.result.fix === undefined) return <p className="quiet">no single change of the job mends it alone</p>;
      return <Fix line={line} fix={state.result.fix} />;
    case "failed":
      return (
        <p className="failing">
          <span aria-hidden="true">◆</span> no fix looked for: {state.problem}
        </p>
      );
    case "stopped":
      return <p className="quiet">smallest fix: stopped</p>;
  }
}

function Fix({ line, fix }: { line: FindingLine; fix: FixFigures }) {
  const system = useBench((bench) => bench.system);
  const currency = useBench((bench) => bench.shop.books?.prices.currency) ?? "";
  const { editFields } = useBench((bench) => bench.actions);
  const apply = () => {
    const { step, changes } = fixStep(line, fix);
    editFields(step, changes);
  };
  return (
    <div className="fix-block">
      <p>
        <strong>smallest fix</strong> {fixCaveat(fix)}
        {fix.words}:{" "}
        <span className="change">
          {fix.before === "" ? "" : `${fix.before} → `}
          {fix.value}
        </span>
      </p>
      <dl>
        <div>
          <dt>margin then</dt>
          <dd>{shareText(fix.margin)}</dd>
        </div>
        {fixCosts(fix, currency, system).map(([name, change]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{change}</dd>
          </div>
        ))}
      </dl>
      <button type="button" className="act" onClick={apply}>
        apply the fix
      </button>
    </div>
  );
}
