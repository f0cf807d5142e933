import type { PsychrometricFrame } from "@oncethrough/engine/chart/psychrometric-frame";
import { toDisplay } from "@oncethrough/engine/quantity/print";
import { type KeyboardEvent, type PointerEvent, useMemo, useRef, useState } from "react";
import { type DayPoint, type DayTyped, dayNudged, dayPoints, dayTyped } from "#state/day-edits";
import "./day-handles.css";
import { useBench } from "./use-bench.ts";

/** The design days as points of the chart that a hand can carry; what they say goes into the duty. */
export default function DayHandles({ frame }: { frame: PsychrometricFrame }) {
  const duty = useBench((bench) => bench.sound!.job.duty);
  const { system } = frame;
  const days = useMemo(() => dayPoints(duty, system), [duty, system]);
  return (
    <fieldset className="day-handles">
      <legend className="unseen">design days on the chart</legend>
      {days.map((day) => (
        <DayHandle key={day.key} day={day} frame={frame} />
      ))}
    </fieldset>
  );
}

function DayHandle({ day, frame }: { day: DayPoint; frame: PsychrometricFrame }) {
  const { moveDay, pickCondition } = useBench((bench) => bench.actions);
  const conditions = useBench((bench) => bench.sound!.job.conditions);
  const condition = useBench((bench) => bench.condition);
  const [tried, setTried] = useState<DayTyped | undefined>(undefined);
  const start = useRef<{ readonly x: number; readonly y: number } | undefined>(undefined);
  const shown = tried?.state ?? day;
  const settle = () => {
    if (tried !== undefined) moveDay(day.key, tried);
    start.current = undefined;
    setTried(undefined);
  };
  const pick = () => {
    const loading = conditions.find(({ key }) => key === condition)?.filterLoading;
    const own = conditions.filter(({ key }) => key.startsWith(`${day.key}-`));
    const found = own.find((each) => each.filterLoading === loading) ?? own[0];
    if (found !== undefined) pickCondition(found.key);
  };
  const onPointerDown = (event: PointerEvent<HTMLDivElement>) => {
    if (event.button !== 0 || !event.isPrimary) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    start.current = { x: event.clientX, y: event.clientY };
  };
  const onPointerMove = (event: PointerEvent) => {
    if (start.current === undefined) return;
    const [dx, dy] = [event.clientX - start.current.x, event.clientY - start.current.y];
    if (tried === undefined && Math.hypot(dx, dy) < 4) return;
    setTried(dayAt(frame, day, frame.x(day.dryBulb) + dx, frame.y(day.humidityRatio) + dy));
  };
  const onPointerUp = () => {
    if (tried === undefined) pick();
    settle();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Escape") setTried(undefined);
    if (event.key === "Enter" || event.key === " ") pick();
    const by = nudges[event.key];
    if (by === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const many = event.shiftKey ? 5 : 1;
    const point = tried === undefined ? day : { ...day, ...tried.state };
    setTried(dayNudged(point, { dryBulb: by[0] * many, moisture: by[1] * many }, frame.pressure, frame.system));
  };
  return (
    <div
      role="slider"
      tabIndex={0}
      className={tried === undefined ? "day-handle" : "day-handle is-tried"}
      style={{ left: frame.x(shown.dryBulb), top: frame.y(shown.humidityRatio) }}
      aria-label={`${day.name} on the chart`}
      aria-valuenow={Math.round(10 * toDisplay(shown.dryBulb, "temperature", frame.system)) / 10}
      aria-valuetext={tried?.words ?? day.words}
      aria-describedby="day-handles-help"
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={onPointerUp}
      onPointerCancel={() => {
        start.current = undefined;
        setTried(undefined);
      }}
      onKeyDown={onKeyDown}
      onKeyUp={settle}
      onBlur={settle}
    >
      <output className={frame.x(shown.dryBulb) > (frame.left + frame.right) / 2 ? "to-the-left" : ""}>
        <strong>{day.name}</strong> {tried?.words ?? day.words}
      </output>
    </div>
  );
}

/** Dry bulb to the right and left, moisture up and down. */
const nudges: Readonly<Record<string, readonly [number, number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** The day in round figures at a point of the chart, inside its plane. */
function dayAt(frame: PsychrometricFrame, day: DayPoint, x: number, y: number): DayTyped {
  const across = Math.min(1, Math.max(0, (x - frame.left) / (frame.right - frame.left)));
  const up = Math.min(1, Math.max(0, (frame.bottom - y) / (frame.bottom - frame.top)));
  const dryBulb = frame.coldest + across * (frame.warmest - frame.coldest);
  return dayTyped(day.moisture, dryBulb, up * frame.wettest, frame.pressure, frame.system);
}
