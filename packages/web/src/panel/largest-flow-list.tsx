import { useMemo } from "react";
import { largestFlowFigures } from "#state/largest-flow-figures";
import { useBench, useRating } from "#view/use-bench";

/** What hood, louver and fan meet at the largest flow that can occur; nothing for other sections, or before all is solved. */
export default function LargestFlowList({ index }: { index: number }) {
  const sound = useBench((bench) => bench.sound);
  const system = useBench((bench) => bench.system);
  const solved = useBench((bench) => bench.solved);
  const key = useRating()?.condition.key;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the book grows in place; `solved` says when
  const figures = useMemo(
    () => (sound === undefined || key === undefined ? [] : largestFlowFigures(sound, index, key, system)),
    [sound, index, key, system, solved],
  );
  if (figures.length === 0) return null;
  return (
    <section aria-label="at the largest flow that can occur">
      <h3>At the largest flow that can occur</h3>
      <div className="rows">
        {figures.map(({ name, value, fails }) => (
          <div key={name} className="figure">
            <span>{name}</span>
            <strong className={fails ? "fails" : undefined}>{value}</strong>
          </div>
        ))}
      </div>
      <p className="quiet">
        filters clean, the fan as fast as any condition asks, in the weather of the condition in hand
      </p>
    </section>
  );
}
