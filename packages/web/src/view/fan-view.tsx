import { type FanChartList, fanChart } from "@oncethrough/engine/chart/fan-chart";
import { type FanSystemCurve, fanChartPoint, fanDesignOf } from "@oncethrough/engine/chart/fan-system";
import type { Condition } from "@oncethrough/engine/duty/condition";
import { printQuantity } from "@oncethrough/engine/quantity/print";
import { useMemo } from "react";
import type { SoundJob } from "#state/sound-job";
import { DrawnOrSaid } from "./drawn-or-said.tsx";
import { PaintedList, placedAt } from "./painted-list.tsx";
import { TakeAway } from "./take-away.tsx";
import { useBench, useRating } from "./use-bench.ts";
import { useEasedList } from "./use-eased-list.ts";
import { useWidth } from "./use-width.ts";
import { useWork } from "./use-work.ts";

const noCurves: readonly FanSystemCurve[] = [];

/** px. */
const tallest = 620;
const shortest = 480;

/** The fan's curves with what the unit asks and where every condition stands on them. */
export function FanView() {
  const [frame, width] = useWidth<HTMLDivElement>();
  const sound = useBench((bench) => bench.sound);
  const attempt = useBench((bench) => `${bench.condition} ${bench.sound?.text}`);
  return (
    <section className="part" aria-label="fan chart">
      <h2>
        Fan chart
        {sound === undefined ? null : <small>{wheelWords(sound)}</small>}
      </h2>
      <TakeAway of="picture" name="fan chart" />
      <div ref={frame}>
        {sound === undefined || width === 0 ? null : (
          <DrawnOrSaid what="the fan chart" attempt={attempt}>
            <Chart sound={sound} width={width} />
          </DrawnOrSaid>
        )}
      </div>
    </section>
  );
}

function wheelWords({ job }: SoundJob): string {
  const { count, wheel } = fanDesignOf(job.unit);
  return count === 1 ? wheel.head.name : `one of ${count}, ${wheel.head.name}`;
}

function Chart({ sound, width }: { sound: SoundJob; width: number }) {
  const system = useBench((bench) => bench.system);
  const solved = useBench((bench) => bench.solved);
  const picked = useBench((bench) => bench.condition);
  const rating = useRating();
  const { unit, conditions } = sound.job;
  const height = Math.max(shortest, Math.min(tallest, Math.round(width * 1.05)));
  const condition = runningCondition(conditions, picked);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the book grows in place; `solved` says when
  const points = useMemo(() => pointsOf(sound, condition), [sound, condition, solved, rating]);
  const task = { kind: "system curves", text: sound.text, condition: condition?.key ?? "" } as const;
  const { now, latest: systems = noCurves } = useWork(condition === undefined ? undefined : task);
  const drawn = useMemo(
    () =>
      points.length === 0
        ? undefined
        : fanChart({
            design: fanDesignOf(unit),
            section: fanName(sound),
            points,
            systems,
            picked: condition?.key,
            system,
            width,
            height,
          }),
    [sound, unit, points, systems, condition, system, width, height],
  );
  const list = useEasedList(drawn, stillWhile(drawn, width)) ?? drawn;
  if (drawn === undefined || list === undefined) return <p className="quiet">the fan stands at every condition</p>;
  return (
    <>
      <svg
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={chartWords(drawn, points, condition)}
      >
        <PaintedList list={list} placing={placedAt(drawn, 1, 0, 0)} />
      </svg>
      <p className="quiet">
        at {printQuantity(drawn.density, "density", system)}; points at other densities are brought there by the fan
        laws
        {now?.is === "failed" ? `; system curves cannot be drawn: ${now.problem}` : null}
        {now?.is === "under way" ? "; system curves follow" : null}
      </p>
    </>
  );
}

/** The picked condition, or the first one at which the fan turns. */
function runningCondition(conditions: readonly Condition[], key: string): Condition | undefined {
  const running = conditions.filter((each) => each.flow.mode !== "fan stopped");
  return running.find((each) => each.key === key) ?? running[0];
}

/** The points of all conditions that are solved already. */
function pointsOf({ book, job }: SoundJob, condition: Condition | undefined) {
  return job.conditions.flatMap(({ key }) => {
    const rating = key === condition?.key ? book.rating(key) : book.known(key);
    if (rating !== undefined) return fanChartPoint(job.unit, rating) ?? [];
    return book.told?.fanPoints.find((point) => point.key === key) ?? [];
  });
}

function fanName({ job }: SoundJob): string {
  return job.unit.sections.find((section) => section.behaviour.role === "fan")?.name ?? "fan";
}

/** What must stay for the chart to move softly: on other scales everything is elsewhere. */
function stillWhile(list: FanChartList | undefined, width: number): string {
  if (list === undefined) return "";
  const { pressure, power } = list.panels;
  return [width, pressure.axis.system, pressure.axis.most, pressure.most, power.most].join(" ");
}

/** The chart in words: its name and the point in hand. */
function chartWords(
  { title, items }: FanChartList,
  points: readonly { readonly key: string; readonly name: string }[],
  condition: Condition | undefined,
): string {
  const point = points.find((each) => each.key === condition?.key);
  const label = items.find((item) => item.key === `pressure-at-${point?.key}`)?.label;
  return label === undefined ? title : `${title}. ${label}`;
}
