import { type AirwayAxis, axisPoint, sectionSpan } from "@oncethrough/engine/chart/airway-axis";
import type { DisplayList } from "@oncethrough/engine/section/display";
import { sectionIndex } from "#state/bench-state";
import { moveWords, placeWords } from "#state/section-edits";
import { AirMotion } from "./air-motion.tsx";
import "./airway-hands.css";
import { KindDialog } from "./kind-dialog.tsx";
import { LengthGrip } from "./length-grip.tsx";
import { PaintedList, type Placing } from "./painted-list.tsx";
import { useBench } from "./use-bench.ts";
import type { SectionDrag } from "./use-section-drag.ts";

interface AirwayHandsProps {
  readonly axis: AirwayAxis;
  readonly drawn: DisplayList;
  readonly placing: Placing;
  readonly width: number;
  /** px of the drawing without what hangs below it. */
  readonly height: number;
  readonly drag: SectionDrag | undefined;
}

/** What a hand can take in the drawing: the ends of the section in hand, the places beside it, a section on its way. */
export default function AirwayHands({ axis, drawn, placing, width, height, drag }: AirwayHandsProps) {
  const isAirMoving = useBench((bench) => bench.airMoves);
  const frame = useBench((bench) => bench.sound?.job.unit.frame);
  const picked = useBench((bench) => sectionIndex(bench.picked));
  const adding = useBench((bench) => bench.addingAt);
  if (frame === undefined) return null;
  const floor = placing.y;
  const ceiling = placing.y - 1000 * frame.height * placing.scale;
  return (
    <div className="airway-hands" style={{ width, height }}>
      {isAirMoving ? <AirMotion axis={axis} ceiling={ceiling} floor={floor} /> : null}
      {drag === undefined ? null : (
        <Carried drag={drag} axis={axis} drawn={drawn} placing={placing} width={width} height={height} />
      )}
      {drag === undefined && picked !== undefined ? (
        <>
          <Beside index={picked} axis={axis} top={ceiling} />
          <LengthGrip key={picked} index={picked} axis={axis} top={ceiling} floor={floor} height={height} />
        </>
      ) : null}
      {adding === undefined ? null : <KindDialog at={adding} />}
    </div>
  );
}

type CarriedProps = Omit<AirwayHandsProps, "drag"> & { readonly drag: SectionDrag };

/** The section as it is carried, where it would come to stand, and what that would mean. */
function Carried({ drag, axis, drawn, placing, width, height }: CarriedProps) {
  const sections = useBench((bench) => bench.sound!.job.unit.sections);
  const section = sections[drag.from]!;
  const own = drawn.items.filter((item) => item.reference.section === section.name && item.shape !== "text");
  const others = sections.toSpliced(drag.from, 1);
  const isMoved = drag.to !== drag.from;
  const words = isMoved ? moveWords(sections, drag.from, drag.to) : undefined;
  const behind = others[drag.to];
  const at = behind === undefined ? sectionSpan(others.at(-1)!).to : sectionSpan(behind).from;
  const x = isMoved ? axisPoint(axis, at) : axisPoint(axis, sectionSpan(section).from);
  const span = sectionSpan(section);
  return (
    <>
      <svg className="carried" width={width} height={height} aria-hidden="true">
        <rect
          className="carried-shade"
          x={axisPoint(axis, span.from) + drag.by}
          y={0}
          width={Math.max(8, (span.to - span.from) * axis.scale)}
          height={height}
        />
        <PaintedList list={{ ...drawn, items: own }} placing={{ ...placing, x: placing.x + drag.by }} />
        <line
          className={words?.weight === "impossible" ? "drop impossible" : "drop"}
          x1={x}
          x2={x}
          y1={0}
          y2={height}
        />
      </svg>
      <p
        role="status"
        className={`drop-words ${words?.weight ?? ""}`}
        style={{ left: Math.max(0, Math.min(x - 120, width - 260)) }}
      >
        <strong>{isMoved ? placeWords(others, drag.to) : "where it stands"}</strong>
        {words === undefined ? null : (
          <span>
            <span aria-hidden="true">{words.weight === "impossible" ? "◆" : "△"}</span> {words.words}
          </span>
        )}
      </p>
    </>
  );
}

/** The two places beside the section in hand, where another can be put. */
function Beside({ index, axis, top }: { index: number; axis: AirwayAxis; top: number }) {
  const sections = useBench((bench) => bench.sound!.job.unit.sections);
  const { addAt } = useBench((bench) => bench.actions);
  const section = sections[index];
  if (section === undefined) return null;
  const { from, to } = sectionSpan(section);
  const places = [
    { at: index, x: axisPoint(axis, from), side: "before" },
    { at: index + 1, x: axisPoint(axis, to), side: "behind" },
  ] as const;
  return (
    <>
      {places.map(({ at, x, side }) => (
        <button
          key={side}
          type="button"
          className={`beside ${side}`}
          style={{ left: x, top: Math.max(0, top - 38) }}
          aria-label={`add a section ${placeWords(sections, at)}`}
          title={`add a section ${placeWords(sections, at)}`}
          onClick={() => addAt(at)}
        >
          +
        </button>
      ))}
    </>
  );
}
