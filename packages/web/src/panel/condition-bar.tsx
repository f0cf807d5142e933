import { useMemo } from "react";
import { choiceOf, conditionSets, nearestLoading } from "#state/condition-choices";
import { printFigure } from "#state/figures";
import { useBench, useRating } from "#view/use-bench";
import "./condition-bar.css";

/** Which condition is in hand: the day, minimum flow, fan stopped or one of the person's own, and the filter loading. */
export function ConditionBar() {
  const conditions = useBench((bench) => bench.sound?.job.conditions);
  const picked = useBench((bench) => bench.condition);
  const { pickCondition } = useBench((bench) => bench.actions);
  const sets = useMemo(() => conditionSets(conditions ?? []), [conditions]);
  const choice = choiceOf(sets, picked);
  const loading = conditions?.find((condition) => condition.key === picked)?.filterLoading ?? 0.5;
  return (
    <section className="condition-bar" aria-label="condition">
      {sets.map((set) => (
        <fieldset key={set.name}>
          <legend>{set.name === "design" ? <span className="unseen">design days</span> : set.name}</legend>
          {set.choices.map((each) => (
            <label key={each.name}>
              <input
                type="radio"
                name="condition"
                className="unseen"
                checked={each === choice}
                onChange={() => pickCondition(nearestLoading(each, loading))}
              />
              <span>{each.name}</span>
            </label>
          ))}
        </fieldset>
      ))}
      <LoadingSlider />
      <UnitWords />
    </section>
  );
}

const loadingWords = (loading: number) =>
  loading === 0 ? "clean" : loading === 1 ? "at change-out" : `${Math.round(100 * loading)} % loaded`;

/** How far the filters are on their way from clean to change-out. */
function LoadingSlider() {
  const conditions = useBench((bench) => bench.sound?.job.conditions);
  const picked = useBench((bench) => bench.condition);
  const { pickCondition } = useBench((bench) => bench.actions);
  const loadings = useMemo(
    () => choiceOf(conditionSets(conditions ?? []), picked)?.loadings ?? [],
    [conditions, picked],
  );
  const index = Math.max(
    0,
    loadings.findIndex((each) => each.key === picked),
  );
  const words = loadingWords(loadings[index]?.loading ?? 0);
  return (
    <label className="loading">
      <span>filters clean</span>
      <input
        type="range"
        min={0}
        max={Math.max(1, loadings.length - 1)}
        step={1}
        value={loadings.length < 2 ? 0.5 : index}
        disabled={loadings.length < 2}
        aria-label="filter loading"
        aria-valuetext={words}
        onChange={(event) => pickCondition(loadings[Number(event.target.value)]?.key ?? picked)}
      />
      <span>change-out</span>
    </label>
  );
}

/** What the unit does at the condition, in one line. */
function UnitWords() {
  const rating = useRating();
  const system = useBench((bench) => bench.system);
  if (rating === undefined) return null;
  const figures = [
    ["supply", printFigure(rating.supplyStandardAirflow, "standardAirflow", system)],
    ["outside air", printFigure(rating.outsideAirShare, "share", system)],
    ["fan motors", printFigure(rating.fanElectricPower, "electricPower", system)],
  ] as const;
  return (
    <dl className="unit-words">
      {figures.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
      {rating.solved ? null : (
        <div className="failing">
          <dt>
            <span aria-hidden="true">◆</span> not solved
          </dt>
          <dd>{rating.reason}</dd>
        </div>
      )}
    </dl>
  );
}
