import { sectionIndex } from "#state/bench-state";
import { useBench } from "./use-bench.ts";

/** What can be done with the section in hand, in words; the drawing takes the same by pointer. */
export function SectionStrip() {
  const index = useBench((bench) => sectionIndex(bench.picked));
  const name = useBench((bench) => (index === undefined ? undefined : bench.sound?.job.unit.sections[index]?.name));
  const count = useBench((bench) => bench.sound?.job.unit.sections.length ?? 0);
  const { moveSection, removeSection, addAt } = useBench((bench) => bench.actions);
  if (index === undefined || name === undefined) return null;
  return (
    <div className="section-strip" role="toolbar" aria-label={`${name} in the airway`}>
      <button type="button" disabled={index === 0} onClick={() => moveSection(index, index - 1)}>
        ← earlier
      </button>
      <button type="button" disabled={index === count - 1} onClick={() => moveSection(index, index + 1)}>
        later →
      </button>
      <button type="button" onClick={() => addAt(index)}>
        add before
      </button>
      <button type="button" onClick={() => addAt(index + 1)}>
        add behind
      </button>
      <button type="button" onClick={() => removeSection(index)}>
        remove
      </button>
    </div>
  );
}

/** Air that is seen to move can be made to stand; it stands for people who ask for no motion. */
export function AirSwitch() {
  const moves = useBench((bench) => bench.airMoves);
  const { setAirMoves } = useBench((bench) => bench.actions);
  return (
    <button type="button" className="air-switch" aria-pressed={moves} onClick={() => setAirMoves(!moves)}>
      {moves ? "air moves" : "air stands"}
    </button>
  );
}
