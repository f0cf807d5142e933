import { unitViews } from "#state/bench-state";
import { useBench } from "./use-bench.ts";

/** From where the machine is seen. */
export function ViewSwitch() {
  const current = useBench((bench) => bench.view);
  const { setView } = useBench((bench) => bench.actions);
  return (
    <fieldset className="view-switch">
      <legend className="unseen">view of the machine</legend>
      {unitViews.map((view) => (
        <label key={view}>
          <input
            type="radio"
            name="view"
            className="unseen"
            checked={current === view}
            onChange={() => setView(view)}
          />
          <span>{view}</span>
        </label>
      ))}
    </fieldset>
  );
}
