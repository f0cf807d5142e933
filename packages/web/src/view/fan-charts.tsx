import { FanView } from "./fan-view.tsx";
import { LedgerView } from "./ledger-view.tsx";
import { OctaveView } from "./octave-view.tsx";

/** What is drawn of the fan: its chart, what its pressure is spent on, and what is heard. */
export default function FanCharts() {
  return (
    <div className="charts-in-hand">
      <FanView />
      <LedgerView />
      <OctaveView />
    </div>
  );
}
