import { isChosenCoil, isRatedCoil } from "@oncethrough/engine/design/choosable";
import { lazy } from "react";
import { sectionIndex } from "#state/bench-state";
import { useBench } from "#view/use-bench";
import { OpenedBand } from "./opened-band.tsx";

const AlternativesPanel = lazy(() => import("./alternatives-panel.tsx"));

/** Where a coil or the fan is in hand: other ways to build it, looked for once somebody opens them. */
export function AlternativesBand() {
  const index = useBench((bench) => sectionIndex(bench.picked));
  const section = useBench((bench) => (index === undefined ? undefined : bench.sound?.job.unit.sections[index]));
  const text = useBench((bench) => bench.sound?.text);
  const isFan = section?.behaviour.role === "fan";
  const what = isFan ? "fans" : section?.kind === "filter bank" ? "filters" : "coils";
  const kind = section?.kind ?? "";
  const hasOthers = what !== "coils" || isChosenCoil(kind) || isRatedCoil(kind);
  if (index === undefined || section === undefined || !hasOthers) return null;
  return (
    <OpenedBand
      label="alternatives"
      className="alternatives-band"
      title={`Other ${what} for this duty`}
      note={section.name}
      what="the list of alternatives"
      attempt={`${index} ${text}`}
    >
      <AlternativesPanel key={section.kind} index={index} />
    </OpenedBand>
  );
}
