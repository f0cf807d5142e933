import { lazy } from "react";
import { useBench } from "#view/use-bench";
import { OpenedBand } from "./opened-band.tsx";

const YearPanel = lazy(() => import("./year-panel.tsx"));

/** Every hour of the year: solved once somebody opens it. */
export function YearBand() {
  const text = useBench((bench) => bench.sound?.text);
  if (text === undefined) return null;
  return (
    <OpenedBand
      label="every hour of the year"
      className="year-band"
      title="Every hour of the year"
      note="energy, frost, what is not held; an hour picked is drawn in the airway"
      what="the year"
      attempt={text}
    >
      <YearPanel />
    </OpenedBand>
  );
}
