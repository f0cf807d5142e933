import { type AirwayAxis, axisPoint, sectionSpan } from "@oncethrough/engine/chart/airway-axis";
import { sectionKind } from "@oncethrough/engine/job/job";
import { type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from "react";
import { sectionPath } from "#state/bench-state";
import { lengthOf, lengthSteps, shortLength, steppedLength, systemTyped } from "#state/length-steps";
import { useBench } from "./use-bench.ts";

interface LengthGripProps {
  readonly index: number;
  readonly axis: AirwayAxis;
  /** px of the cabinet's ceiling and floor, and of the drawing's foot. */
  readonly top: number;
  readonly floor: number;
  readonly height: number;
}

/** The end of the section in hand: carried or nudged, it sets the clear length where the kind has one. */
export function LengthGrip({ index, axis, top, floor, height }: LengthGripProps) {
  const section = useBench((bench) => bench.sound?.job.unit.sections[index]);
  const system = useBench((bench) =>
    systemTyped(bench.reading.places(`${sectionPath(index)}.length`)?.text, bench.system),
  );
  const { resizeSection } = useBench((bench) => bench.actions);
  const [tried, setTried] = useState<number | undefined>(undefined);
  useTrial(index, tried === undefined ? undefined : shortLength(tried, system));
  const grip = useRef<{ readonly x: number; readonly length: number } | undefined>(undefined);
  const field = section === undefined ? undefined : sectionKind(section.kind)?.fields.length;
  if (section === undefined || field?.type !== "quantity") return null;
  const now = section.layout.length;
  const range = { least: lengthOf(field.minimum) ?? 0.01, most: lengthOf(field.maximum) ?? 12 };
  const within = (length: number) => Math.min(range.most, Math.max(range.least, steppedLength(length, system)));
  const { from } = sectionSpan(section);
  const shown = tried ?? now;
  const settle = () => {
    if (tried !== undefined && Math.abs(tried - now) > 1e-6) resizeSection(index, shortLength(tried, system));
    grip.current = undefined;
    setTried(undefined);
  };
  const onPointerDown = (event: PointerEvent<HTMLDivElement>) => {
    if (event.button !== 0 || !event.isPrimary) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    grip.current = { x: event.clientX, length: now };
  };
  const onPointerMove = (event: PointerEvent) => {
    if (grip.current === undefined) return;
    setTried(within(grip.current.length + (event.clientX - grip.current.x) / axis.scale / 1000));
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Escape") setTried(undefined);
    const by = nudges[event.key];
    if (by === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const step = lengthSteps[system][event.shiftKey ? "many" : "one"];
    setTried(within(shown + by * step));
  };
  const end = axisPoint(axis, from) + 1000 * shown * axis.scale;
  const before = axisPoint(axis, from) + 1000 * now * axis.scale;
  return (
    <>
      {tried === undefined ? null : (
        <div
          className={tried < now ? "length-change less" : "length-change more"}
          style={{ left: Math.min(end, before), width: Math.abs(end - before), top, height: floor - top }}
        />
      )}
      <div
        role="slider"
        tabIndex={0}
        className="length-grip"
        style={{ left: end, top: floor - 6, height: Math.max(24, Math.min(44, height - floor)) }}
        aria-label={`clear length of ${section.name}`}
        aria-valuemin={Math.round(1000 * range.least)}
        aria-valuemax={Math.round(1000 * range.most)}
        aria-valuenow={Math.round(1000 * shown)}
        aria-valuetext={shortLength(shown, system)}
        title={`drag to set the clear length of ${section.name}`}
        onPointerDown={onPointerDown}
        onPointerMove={onPointerMove}
        onPointerUp={settle}
        onPointerCancel={() => {
          grip.current = undefined;
          setTried(undefined);
        }}
        onKeyDown={onKeyDown}
        onKeyUp={settle}
        onBlur={settle}
      >
        {tried === undefined ? null : <output className="length-words">{shortLength(tried, system)}</output>}
      </div>
    </>
  );
}

/** The drawing follows what is tried, at most once a frame. */
function useTrial(index: number, typed: string | undefined): void {
  const { tryLength } = useBench((bench) => bench.actions);
  const isTried = typed !== undefined;
  useEffect(() => {
    if (typed === undefined) return;
    const frame = requestAnimationFrame(() => tryLength(index, typed));
    return () => cancelAnimationFrame(frame);
  }, [index, typed, tryLength]);
  useEffect(() => {
    if (isTried) return () => tryLength(index, undefined);
    return undefined;
  }, [index, isTried, tryLength]);
}

const nudges: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 6,
  PageDown: -6,
};
