import { axisPosition } from "@oncethrough/engine/chart/airway-axis";
import { stationsOf } from "@oncethrough/engine/unit/report";
import { lazy, type PointerEvent, Suspense, useMemo, useState } from "react";
import { arrangementOf } from "#state/arranged";
import { isStale, sectionIndex, type UnitView } from "#state/bench-state";
import "./airway.css";
import { elevationOf, pageAxis, profilesOf } from "./airway-pictures.ts";
import { Crosshair } from "./crosshair.tsx";
import { DrawnOrSaid } from "./drawn-or-said.tsx";
import { FindingFlags } from "./finding-flags.tsx";
import { PaintedList, placedAt } from "./painted-list.tsx";
import { SectionColumns } from "./section-columns.tsx";
import { AirSwitch, SectionStrip } from "./section-strip.tsx";
import { SheetView } from "./sheet-view.tsx";
import { SolidView } from "./solid-view.tsx";
import { TakeAway } from "./take-away.tsx";
import { useBench } from "./use-bench.ts";
import { useEasedList } from "./use-eased-list.ts";
import { useSectionDrag } from "./use-section-drag.ts";
import { usePageHeight, useWidth } from "./use-width.ts";
import { ViewSwitch } from "./view-switch.tsx";

/** What the hand takes in the drawing comes right behind the page. */
const AirwayHands = lazy(() => import("./airway-hands.tsx"));

/** px between the elevation and the profiles, for the words of the station in hand. */
const readOutHeight = 30;

/** The machine to scale, and below it on the same axis what it does to the air. */
export function AirwayView() {
  const [frame, width] = useWidth<HTMLDivElement>();
  const sound = useBench((bench) => bench.sound);
  const stale = useBench(isStale);
  const view = useBench((bench) => bench.view);
  const attempt = useBench((bench) => `${bench.view} ${bench.condition} ${bench.sound?.text}`);
  const pageHeight = usePageHeight();
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
            {view === "side" ? <FindingFlags axis={pageAxis(sound, width, pageHeight)} /> : null}
            <Machine view={view} width={width} />
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
      return <Airway width={width} />;
    case "3D":
      return <SolidView />;
    default:
      return <SheetView view={view} width={width} />;
  }
}

function Airway({ width }: { width: number }) {
  const still = useBench((bench) => bench.sound)!;
  const trial = useBench((bench) => bench.trial);
  const sound = trial ?? still;
  const system = useBench((bench) => bench.system);
  const picked = useBench((bench) => bench.picked);
  const rating = useBench(({ condition }) => sound.book.rating(condition));
  // Arranged anew once all its conditions are solved.
  const arrangement = useBench(() => arrangementOf(sound));
  const [pointer, setPointer] = useState<number | undefined>(undefined);
  const { unit } = sound.job;
  const pageHeight = usePageHeight();
  const index = sectionIndex(picked);
  const pickedName = index === undefined ? undefined : unit.sections[index]?.name;
  // The scale holds while the end of a section is carried, so that the drawing stays under the pointer.
  const axis = useMemo(() => pageAxis(still, width, pageHeight), [still, width, pageHeight]);
  const drawn = useMemo(
    () => elevationOf(sound, arrangement, axis, system, pickedName),
    [sound, arrangement, axis, system, pickedName],
  );
  const curves = useMemo(
    () => (rating === undefined ? undefined : profilesOf(sound, rating, axis, system)),
    [sound, rating, axis, system],
  );
  const stations = useMemo(() => (rating === undefined ? [] : stationsOf(unit, rating)), [unit, rating]);
  const atOnce = trial ?? `${axis.scale} ${system}`;
  const elevation = useEasedList(drawn, atOnce) ?? drawn;
  const profiles = useEasedList(curves, atOnce) ?? curves;
  const elevationHeight = Math.ceil(drawn.box.height * axis.scale);
  const profilesTop = elevationHeight + readOutHeight;
  const height = profilesTop + (curves?.box.height ?? 0);
  const follow = (event: PointerEvent<HTMLDivElement>) =>
    setPointer(axisPosition(axis, event.clientX - event.currentTarget.getBoundingClientRect().left));
  const station =
    pointer === undefined
      ? stations[(index ?? unit.sections.length - 1) + 1]
      : stations.toSorted((one, other) => distance(one, pointer) - distance(other, pointer))[0];
  const carry = useSectionDrag(axis);
  const placing = placedAt(drawn, axis.scale, axis.gutter, 0);
  return (
    <div className="airway-stage" onPointerMove={follow} onPointerLeave={() => setPointer(undefined)}>
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: the section around it has the name; a title would pop up under the pointer */}
      <svg width={width} height={height} viewBox={`0 0 ${width} ${height}`}>
        <SectionColumns axis={axis} height={height} layer="tint" />
        <PaintedList list={elevation} placing={placing} />
        {profiles === undefined ? null : (
          <PaintedList list={profiles} placing={placedAt(profiles, 1, 0, profilesTop)} />
        )}
        {curves === undefined || station === undefined ? null : (
          <Crosshair station={station} axis={axis} profiles={curves} top={profilesTop} width={width} />
        )}
        <SectionColumns axis={axis} height={height} layer="hands" carry={carry} />
      </svg>
      <Suspense fallback={null}>
        <AirwayHands
          axis={axis}
          drawn={drawn}
          placing={placing}
          width={width}
          height={elevationHeight}
          drag={carry.drag}
        />
      </Suspense>
    </div>
  );
}

function distance(station: { readonly position: number }, pointer: number): number {
  return Math.abs(1000 * station.position - pointer);
}
