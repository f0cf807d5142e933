import { lazy, Suspense } from "react";
import { isStale, type UnitView } from "#state/bench-state";
import "./airway.css";
import { DrawnOrSaid } from "./drawn-or-said.tsx";
import { AirSwitch, SectionStrip } from "./section-strip.tsx";
import { SheetView } from "./sheet-view.tsx";
import { SolidView } from "./solid-view.tsx";
import { TakeAway } from "./take-away.tsx";
import { useBench } from "./use-bench.ts";
import { useWidth } from "./use-width.ts";
import { ViewSwitch } from "./view-switch.tsx";

/** Asked for at once, and drawn as soon as it has come. */
const drawing = import("./airway-drawing.tsx");
const AirwayDrawing = lazy(() => drawing);

/** The machine to scale, and below it on the same axis what it does to the air. */
export function AirwayView() {
  const [frame, width] = useWidth<HTMLDivElement>();
  const sound = useBench((bench) => bench.sound);
  const stale = useBench(isStale);
  const view = useBench((bench) => bench.view);
  const attempt = useBench((bench) => `${bench.view} ${bench.condition} ${bench.sound?.text}`);
  const isReady = sound !== undefined && width > 0;
  return (
    <section className="airway" aria-label="airway of the unit: elevation and profiles">
      <div className="airway-head">
        <ViewSwitch />
        {view === "side" && isReady ? (
          <>
            <SectionStrip />
            <AirSwitch />
          </>
        ) : null}
        {view === "3D" ? null : <TakeAway of="picture" name={view === "side" ? "airway" : `machine, ${view}`} />}
      </div>
      <AirwayNotice />
      {stale ? (
        <p className="stale">
          <span aria-hidden="true">◆</span> drawing shows the last sound text
        </p>
      ) : null}
      <div ref={frame}>
        {isReady ? (
          <DrawnOrSaid what="the airway" attempt={attempt}>
            <Suspense fallback={<p className="quiet airway-waits">drawing …</p>}>
              <Machine view={view} width={width} />
            </Suspense>
          </DrawnOrSaid>
        ) : (
          <p className="quiet">no sound job to draw yet</p>
        )}
      </div>
    </section>
  );
}

/** What speaks against the last act of a hand, where the hand is; the foot of the page speaks it. */
function AirwayNotice() {
  const notice = useBench((bench) => bench.notice);
  const { notice: say } = useBench((bench) => bench.actions);
  if (notice?.weight !== "caution") return null;
  return (
    <p className="airway-notice">
      <span aria-hidden="true">◆ {notice.text}</span>
      <button type="button" onClick={() => say(undefined)}>
        well
      </button>
    </p>
  );
}

function Machine({ view, width }: { view: UnitView; width: number }) {
  switch (view) {
    case "side":
      return <AirwayDrawing width={width} />;
    case "3D":
      return <SolidView />;
    default:
      return <SheetView view={view} width={width} />;
  }
}
