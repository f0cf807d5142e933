import type { UnitSection } from "@oncethrough/engine/unit/unit";
import { sectionPath } from "#state/bench-state";
import { printFigure } from "#state/figures";
import type { Unmet } from "#state/told-conditions";
import { useBench } from "#view/use-bench";

const none: readonly UnitSection[] = [];

/** A thing that is not met; a click leads to the section and the condition at which it is worst. */
export function UnmetRow({ unmet }: { unmet: Unmet }) {
  const system = useBench((bench) => bench.system);
  const sections = useBench((bench) => bench.sound?.job.unit.sections) ?? none;
  const { pick, pickCondition } = useBench((bench) => bench.actions);
  const index = sections.findIndex((section) => section.name === unmet.section);
  const goThere = () => {
    pickCondition(unmet.condition.key);
    pick(index < 0 ? "duty" : sectionPath(index));
  };
  return (
    <li className="fails">
      <span className="sign" aria-hidden="true">
        ◆
      </span>
      <button type="button" onClick={goThere}>
        <span>
          <span className="unseen">not met: </span>
          {unmet.what}
        </span>
        <strong>{printFigure(unmet.got, unmet.quantity, system)}</strong>
        <small>
          {unmet.section}, wanted {printFigure(unmet.wanted, unmet.quantity, system)}; worst at {unmet.condition.name}
          {unmet.conditions > 1 ? `, missed at ${unmet.conditions} conditions` : ""}
        </small>
      </button>
    </li>
  );
}
