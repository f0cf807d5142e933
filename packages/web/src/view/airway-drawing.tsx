import { axisPosition } from "@oncethrough/engine/chart/airway-axis";
import type { SectionPictures } from "@oncethrough/engine/drawing/elevation";
import { stationsOf } from "@oncethrough/engine/unit/report";
import { lazy, type PointerEvent, Suspense, useMemo, useState } from "react";
import { arrangementOf } from "#state/arranged";
import { sectionIndex } from "#state/bench-state";
import { elevationOf, pageAxis, profilesOf } from "./airway-pictures.ts";
import { Crosshair } from "./crosshair.tsx";
import { PaintedList, placedAt } from "./painted-list.tsx";
import { SectionColumns } from "./section-columns.tsx";
import { useBench } from "./use-bench.ts";
import { useEasedList } from "./use-eased-list.ts";
import { useSectionDrag } from "./use-section-drag.ts";
import { usePageHeight } from "./use-width.ts";

/** What judges the machine, and what the hand takes in the drawing, come behind the drawing. */
const FindingFlags = lazy(() => import("./finding-flags.tsx"));
const AirwayHands = lazy(() => import("./airway-hands.tsx"));

/** px between the elevation and the profiles, for the words of the station in hand. */
const readOutHeight = 30;

/** Elevation and profiles on one axis, and what the hand takes there. */
export default function AirwayDrawing({ width }: { width: number }) {
  const still = useBench((bench) => bench.sound)!;
  const trial = useBench((bench) => bench.trial);
  const sound = trial ?? still;
  const system = useBench((bench) => bench.system);
  const picked = useBench((bench) => bench.picked);
  const rating = useBench(({ condition }) => sound.book.rating(condition));
  // Arranged anew once all its conditions are told of.
  const arrangement = useBench(() => arrangementOf(sound));
  const [pointer, setPointer] = useState<number | undefined>(undefined);
  const { unit } = sound.job;
  const pageHeight = usePageHeight();
  const index = sectionIndex(picked);
  const pickedName = index === undefined ? undefined : unit.sections[index]?.name;
  // The scale holds while the end of a section is carried, so that the drawing stays under the pointer.
  const axis = useMemo(() => pageAxis(still, width, pageHeight), [still, width, pageHeight]);
  const [pictures] = useState<SectionPictures>(() => ({ casing: undefined, of: new WeakMap() }));
  const drawn = useMemo(
    () => elevationOf(sound, arrangement, axis, system, pickedName, pictures),
    [sound, arrangement, axis, system, pickedName, pictures],
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
    <>
      <Suspense fallback={null}>
        <FindingFlags axis={axis} />
      </Suspense>
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
    </>
  );
}

function distance(station: { readonly position: number }, pointer: number): number {
  return Math.abs(1000 * station.position - pointer);
}
