import { type AirPath, airPath } from "@oncethrough/engine/chart/air-path";
import { type PsychrometricList, psychrometricChart } from "@oncethrough/engine/chart/psychrometric-chart";
import { sitePressure } from "@oncethrough/engine/duty/standard-conditions";
import { printQuantity } from "@oncethrough/engine/quantity/print";
import { lazy, Suspense, useMemo } from "react";
import { conditionSets, nearestLoading } from "#state/condition-choices";
import type { SoundJob } from "#state/sound-job";
import { DrawnOrSaid } from "./drawn-or-said.tsx";
import { PaintedList, placedAt } from "./painted-list.tsx";
import { TakeAway } from "./take-away.tsx";
import { useBench, useRating } from "./use-bench.ts";
import { useEasedList } from "./use-eased-list.ts";
import { useWidth } from "./use-width.ts";

/** What a hand takes on the chart comes right behind the page. */
const DayHandles = lazy(() => import("./day-handles.tsx"));

/** px. */
const tallest = 490;
const shortest = 340;

/** The psychrometric chart of the site, with the air path of every day and of the condition in hand. */
export default function PsychrometricView() {
  const [frame, width] = useWidth<HTMLDivElement>();
  const sound = useBench((bench) => bench.sound);
  const system = useBench((bench) => bench.system);
  const attempt = useBench((bench) => `${bench.condition} ${bench.sound?.text}`);
  const pressure = sound === undefined ? undefined : sitePressure(sound.job.duty);
  return (
    <section className="part" aria-label="psychrometric chart">
      <h2>
        Psychrometric chart
        {pressure === undefined ? null : (
          <small>{`at the site's ${printQuantity(pressure, "absolutePressure", system)}`}</small>
        )}
      </h2>
      <TakeAway of="picture" name="psychrometric chart" />
      <div ref={frame}>
        {sound === undefined || width === 0 ? null : (
          <DrawnOrSaid what="the chart" attempt={attempt}>
            <Chart sound={sound} width={width} />
          </DrawnOrSaid>
        )}
      </div>
    </section>
  );
}

function Chart({ sound, width }: { sound: SoundJob; width: number }) {
  const system = useBench((bench) => bench.system);
  const solved = useBench((bench) => bench.solved);
  const condition = useBench((bench) => bench.condition);
  const rating = useRating();
  const height = Math.max(shortest, Math.min(tallest, Math.round(width * 0.82)));
  // biome-ignore lint/correctness/useExhaustiveDependencies: the book grows in place; `solved` says when
  const paths = useMemo(() => pathsOf(sound, condition), [sound, condition, solved, rating]);
  const drawn = useMemo(
    () =>
      psychrometricChart({
        pressure: sitePressure(sound.job.duty),
        system,
        paths,
        picked: condition,
        width,
        height,
      }),
    [sound, system, paths, condition, width, height],
  );
  const list = useEasedList(drawn, stillWhile(drawn, width)) ?? drawn;
  return (
    <div className="chart-stage">
      <svg
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={chartWords(drawn.title, paths, condition)}
      >
        <PaintedList list={list} placing={placedAt(drawn, 1, 0, 0)} />
      </svg>
      <Suspense fallback={null}>
        <DayHandles frame={drawn.frame} />
      </Suspense>
      <p id="day-handles-help" className="unseen">
        arrow keys left and right set the dry bulb, up and down the moisture; Shift goes further, Escape gives up
      </p>
    </div>
  );
}

/** What must stay for the chart to move softly: on other scales everything is elsewhere. */
function stillWhile({ frame }: PsychrometricList, width: number): string {
  const { dryBulbs, humidityRatios, system, pressure } = frame;
  return [width, system, pressure, dryBulbs.low, dryBulbs.high, humidityRatios.high].join(" ");
}

/** One path for every choice of the picker, at the loading nearest to the picked one, as far as they are solved. */
function pathsOf(sound: SoundJob, picked: string): readonly AirPath[] {
  const { unit, conditions } = sound.job;
  const loading = conditions.find((condition) => condition.key === picked)?.filterLoading ?? 0.5;
  const choices = conditionSets(conditions).flatMap((set) => set.choices);
  const keys = new Set([...choices.map((choice) => nearestLoading(choice, loading)), picked]);
  return [...keys].flatMap((key) => {
    const rating = sound.book.known(key);
    if (rating !== undefined) return [airPath(unit, rating)];
    return sound.book.told?.paths.find((path) => path.key === key) ?? [];
  });
}

/** The picked path in words. */
function chartWords(title: string, paths: readonly AirPath[], picked: string): string {
  const path = paths.find((each) => each.key === picked);
  return path === undefined ? title : `${title}. ${path.name}: ${path.states.map((state) => state.name).join(", ")}`;
}
