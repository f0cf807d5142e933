import { type SolidLayer, solidsOf } from "@oncethrough/engine/drawing/solids";
import type { Unit } from "@oncethrough/engine/unit/unit";
import { type KeyboardEvent, type PointerEvent, useEffect, useMemo, useRef, useState } from "react";
import { sectionIndex, sectionPath } from "#state/bench-state";
import { SolidStage, type StandPoint } from "./solid-stage.ts";
import "./solid-view.css";
import { SolidText } from "./solid-text.tsx";
import { useArrangement } from "./use-arrangement.ts";
import { useBench } from "./use-bench.ts";
import { usePageHeight, useWidth } from "./use-width.ts";

const standPoints: readonly StandPoint[] = ["corner", "right", "left", "above"];
/** px of the page beside the view; and the least that a machine is seen in. */
const besidesView = 420;
const leastHeight = 300;

/** The machine as solids: turned, cut and opened by hand, its sections picked where they stand. */
export default function SolidCanvas() {
  const arrangement = useArrangement();
  const unit = useBench((bench) => bench.sound?.job.unit);
  const solids = useMemo(() => (arrangement === undefined ? [] : solidsOf(arrangement)), [arrangement]);
  const [isOpen, setOpen] = useState(true);
  const [cut, setCut] = useState(0);
  const [showsRoom, setShowsRoom] = useState(false);
  const hidden = useMemo(
    () =>
      new Set<SolidLayer>([
        ...(isOpen ? (["casing"] as const) : []),
        ...(showsRoom ? [] : (["service space"] as const)),
      ]),
    [isOpen, showsRoom],
  );
  const hasRoom = solids.some(({ layer }) => layer === "service space");
  const stage = useRef<SolidStage>(undefined);
  if (unit === undefined) return <p className="quiet">no sound job to draw yet</p>;
  return (
    <>
      <p className="solid-hands">
        <Tick words="hide the casing" value={isOpen} onChange={setOpen} />
        {hasRoom ? <Tick words="room for service" value={showsRoom} onChange={setShowsRoom} /> : null}
        <label>
          cut along the airway
          <input
            type="range"
            min={0}
            max={0.9}
            step={0.05}
            value={cut}
            aria-valuetext={cut === 0 ? "whole" : `${Math.round(100 * cut)} % of the width cut away`}
            onChange={(event) => setCut(Number(event.target.value))}
          />
        </label>
        <span className="stand-points">
          {standPoints.map((point) => (
            <button key={point} type="button" onClick={() => stage.current?.stand(point)}>
              {point === "above" ? "from above" : `from the ${point}`}
            </button>
          ))}
        </span>
      </p>
      <Scene stage={stage} solids={solids} hidden={hidden} cut={cut} unit={unit} />
      <SolidText unit={unit} solids={solids} />
    </>
  );
}

interface TickProps {
  readonly words: string;
  readonly value: boolean;
  readonly onChange: (value: boolean) => void;
}

function Tick({ words, value, onChange }: TickProps) {
  return (
    <label>
      <input type="checkbox" checked={value} onChange={(event) => onChange(event.target.checked)} /> {words}
    </label>
  );
}

interface SceneProps {
  readonly stage: { current: SolidStage | undefined };
  readonly solids: ReturnType<typeof solidsOf>;
  readonly hidden: ReadonlySet<SolidLayer>;
  readonly cut: number;
  readonly unit: Unit;
}

const turns: Readonly<Record<string, readonly [number, number, number]>> = {
  ArrowLeft: [-0.12, 0, 1],
  ArrowRight: [0.12, 0, 1],
  ArrowUp: [0, 0.12, 1],
  ArrowDown: [0, -0.12, 1],
  "+": [0, 0, 1.15],
  "=": [0, 0, 1.15],
  "-": [0, 0, 1 / 1.15],
};

function Scene({ stage, solids, hidden, cut, unit }: SceneProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [frame, wide] = useWidth<HTMLDivElement>();
  const high = Math.max(leastHeight, Math.min(0.62 * wide, usePageHeight() - besidesView));
  const picked = useBench((bench) => bench.picked);
  const sections = useBench((bench) => bench.sound?.job.unit.sections);
  const { pick, pickBeside } = useBench((bench) => bench.actions);
  const index = sectionIndex(picked);
  const name = index === undefined ? undefined : sections?.[index]?.name;
  const pressed = useRef({ x: 0, y: 0 });

  useEffect(() => {
    const made = new SolidStage(canvas.current!);
    stage.current = made;
    const follow = () => made.restyle();
    const scheme = window.matchMedia("(prefers-color-scheme: dark)");
    const theme = new MutationObserver(follow);
    theme.observe(document.documentElement, { attributeFilter: ["data-theme"] });
    scheme.addEventListener("change", follow);
    return () => {
      theme.disconnect();
      scheme.removeEventListener("change", follow);
      made.dispose();
      stage.current = undefined;
    };
  }, [stage]);
  useEffect(() => {
    if (wide > 0) stage.current?.resize(wide, high);
  }, [stage, wide, high]);
  const isSized = wide > 0;
  useEffect(() => {
    if (isSized) stage.current?.show(solids, { ...unit.frame, length: unit.length });
  }, [stage, solids, unit, isSized]);
  useEffect(() => stage.current?.look({ hidden, cut, picked: name }), [stage, hidden, cut, name]);

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const turn = turns[event.key];
    if (turn !== undefined) stage.current?.turn(...turn);
    else if (event.key === "Home") stage.current?.stand("corner");
    else if (event.key === "PageDown" || event.key === "PageUp") pickBeside(event.key === "PageDown" ? 1 : -1);
    else return;
    event.preventDefault();
  };
  const onPointerUp = (event: PointerEvent<HTMLCanvasElement>) => {
    const { clientX: x, clientY: y } = event;
    if (Math.hypot(x - pressed.current.x, y - pressed.current.y) > 4) return;
    const box = event.currentTarget.getBoundingClientRect();
    const found = stage.current?.sectionAt((2 * (x - box.left)) / box.width - 1, 1 - (2 * (y - box.top)) / box.height);
    const at = sections?.findIndex((section) => section.name === found) ?? -1;
    if (at >= 0) pick(sectionPath(at));
    event.currentTarget.dataset.frames = String(stage.current?.frames);
  };
  return (
    <div ref={frame} className="solid-frame">
      {/* biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a canvas alone has no role; an application takes keys of its own */}
      <canvas
        ref={canvas}
        style={{ height: high }}
        tabIndex={0}
        role="application"
        aria-label={`the machine in three dimensions, ${name ?? "no section"} in hand; arrow keys turn it, plus and minus go nearer and away, page keys pick the next section, home shows all`}
        onKeyDown={onKeyDown}
        onPointerDown={(event) => {
          pressed.current = { x: event.clientX, y: event.clientY };
        }}
        onPointerUp={onPointerUp}
      />
      <p className="quiet solid-help">drag to turn, wheel or pinch to go nearer, click a section to take it in hand</p>
    </div>
  );
}
