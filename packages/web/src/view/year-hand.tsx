import type { CarpetList } from "@oncethrough/engine/chart/carpet-plot";
import { dayPoint } from "@oncethrough/engine/chart/carpet-plot";
import { loadDuration } from "@oncethrough/engine/chart/load-duration";
import { coilLoadCarpet, freezeMarginCarpet, leavingAirCarpet } from "@oncethrough/engine/chart/year-carpets";
import { yearMonths } from "@oncethrough/engine/chart/year-months";
import { yearStates } from "@oncethrough/engine/chart/year-states";
import type { DisplayList } from "@oncethrough/engine/section/display";
import { hourName } from "@oncethrough/engine/weather/calendar";
import type { WeatherYear } from "@oncethrough/engine/weather/weather-year";
import { syntheticYearOfDuty } from "@oncethrough/engine/year/synthetic-duty";
import { memo, type PointerEvent, useMemo } from "react";
import { printFigure } from "#state/figures";
import { hourAt, hourConditions, hourOfKey } from "#state/hour-in-hand";
import { type WrongKind, type WrongRun, wrongKinds, wrongRuns } from "#state/wrong-hours";
import type { YearResult } from "#work/task";
import { PaintedList, placedAt } from "./painted-list.tsx";
import { TakeAway } from "./take-away.tsx";
import { useBench } from "./use-bench.ts";
import { useWidth } from "./use-width.ts";

/** The hours of a year as carpets, with a hand on each hour, and the hours in which something is wrong. */
export function YearHand({ result, weather }: { result: YearResult; weather: WeatherYear | undefined }) {
  const [frame, width] = useWidth<HTMLDivElement>();
  const job = useBench((bench) => bench.sound!.job);
  const inHand = useBench((bench) => hourOfKey(bench.condition));
  const { pickHour } = useBench((bench) => bench.actions);
  const { lists } = result.year;
  const { hours } = result.year.plan;
  // Made ready with the first hour that is picked: the flows of open valves take a moment.
  const conditions = useMemo(() => {
    let known: ReturnType<typeof hourConditions> | undefined;
    return (hour: number) => {
      known ??= hourConditions(job, weather ?? syntheticYearOfDuty(job.duty), lists.cooling);
      return known(hour);
    };
  }, [job, weather, lists]);
  const take = (hour: number) => pickHour(conditions(Math.min(hours - 1, Math.max(0, hour))));
  const kinds = useMemo(() => wrongKinds(wrongRuns({ lists, hours })), [lists, hours]);
  return (
    <>
      <HourScrubber hour={inHand} hours={hours} result={result} onTake={take} />
      <div className="year-carpets" ref={frame}>
        {width === 0 ? null : <Carpets result={result} width={width} hour={inHand} onTake={take} />}
      </div>
      <WrongHours kinds={kinds} hours={hours} onTake={take} />
    </>
  );
}

interface ScrubberProps {
  readonly hour: number | undefined;
  readonly hours: number;
  readonly result: YearResult;
  readonly onTake: (hour: number) => void;
}

function HourScrubber({ hour, hours, result, onTake }: ScrubberProps) {
  const system = useBench((bench) => bench.system);
  const { lists, plan } = result.year;
  const words = hour === undefined ? "no hour in hand" : hourName(hour, hours);
  const figures =
    hour === undefined
      ? []
      : [
          ["outdoors", printFigure(plan.weather.dryBulb[hour]!, "temperature", system)],
          ["leaving", printFigure(lists.supplyDryBulb[hour]!, "temperature", system)],
          ["heating", printFigure(lists.steamHeat[hour]! + lists.heatingWaterHeat[hour]!, "power", system)],
          ["cooling", printFigure(lists.chilledWaterHeat[hour]!, "power", system)],
        ];
  return (
    <div className="hour-scrubber">
      <label>
        <span>hour</span>
        <input
          type="range"
          min={0}
          max={hours - 1}
          step={1}
          value={hour ?? 0}
          aria-valuetext={words}
          aria-label="hour of the year"
          onChange={(event) => onTake(Number(event.target.value))}
        />
      </label>
      <strong>{words}</strong>
      {figures.map(([name, figure]) => (
        <span key={name}>
          <span className="quiet">{name}</span> {figure}
        </span>
      ))}
      {hour === undefined ? (
        <span className="quiet">pick one here, in a carpet or in a list: the airway follows</span>
      ) : null}
    </div>
  );
}

interface CarpetsProps {
  readonly result: YearResult;
  readonly width: number;
  readonly hour: number | undefined;
  readonly onTake: (hour: number) => void;
}

function Carpets({ result, width, hour, onTake }: CarpetsProps) {
  const system = useBench((bench) => bench.system);
  const { year } = result;
  const carpets = useMemo(() => {
    const options = { year, system, width };
    return [leavingAirCarpet(options), coilLoadCarpet(options), freezeMarginCarpet(options)];
  }, [year, system, width]);
  return (
    <>
      {carpets.map((list) => (
        <Carpet key={list.title} list={list} hours={year.plan.hours} hour={hour} onTake={onTake} />
      ))}
    </>
  );
}

/** What the months cost and used, for how many hours a load lasts, and where the states lie. */
export const YearPictures = memo(function YearPictures({ result }: { result: YearResult }) {
  const [frame, width] = useWidth<HTMLDivElement>();
  const system = useBench((bench) => bench.system);
  const { year, report } = result;
  const pictures = useMemo(() => {
    const columns = Math.max(1, Math.min(3, Math.floor((width + pictureGap) / (leastPicture + pictureGap))));
    const each = Math.floor((width - (columns - 1) * pictureGap) / columns) - 1;
    const options = { year, system, width: each };
    return [
      yearMonths(report, { system, width: each }),
      loadDuration(options, report, 300),
      yearStates(options, Math.round(Math.min(440, 0.72 * each))),
    ];
  }, [year, report, system, width]);
  return (
    <div className="year-pictures" ref={frame}>
      {width === 0 ? null : pictures.map((list) => <Picture key={list.title} list={list} />)}
    </div>
  );
});

/** px: of a picture at least, and between two. */
const leastPicture = 560;
const pictureGap = 28;

const Picture = memo(function Picture({ list }: { list: DisplayList }) {
  const { width, height } = list.box;
  return (
    <figure className="year-figure">
      <svg className="year-picture" width={width} height={height} role="img" aria-label={list.title}>
        <PaintedList list={list} placing={placedAt(list, 1, 0, 0)} />
      </svg>
      <TakeAway of="picture" name={list.title} />
    </figure>
  );
});

interface CarpetProps {
  readonly list: CarpetList;
  readonly hours: number;
  readonly hour: number | undefined;
  readonly onTake: (hour: number) => void;
}

/** A carpet under the pointer: pressed or drawn over, it gives the hour below. The scrubber does the same by keys. */
function Carpet({ list, hours, hour, onTake }: CarpetProps) {
  const { frame } = list;
  const { width, height } = list.box;
  const placing = useMemo(() => placedAt(list, 1, 0, 0), [list]);
  const take = (event: PointerEvent<SVGSVGElement>) => {
    if (event.buttons === 0) return;
    const box = event.currentTarget.getBoundingClientRect();
    onTake(hourAt(frame, event.clientX - box.left, event.clientY - box.top, hours));
  };
  const x = hour === undefined ? undefined : dayPoint(frame, Math.floor(hour / 24) + 0.5, hours);
  const y = hour === undefined ? 0 : frame.bottom - (((hour % 24) + 0.5) / 24) * (frame.bottom - frame.top);
  return (
    <figure className="year-figure">
      <svg
        className="year-carpet"
        width={width}
        height={height}
        role="img"
        aria-label={`${list.title}, a day to the column`}
        onPointerDown={take}
        onPointerMove={take}
      >
        <PaintedList list={list} placing={placing} />
        {x === undefined ? null : (
          <g className="hour-cross" data-hand="">
            <line x1={x} x2={x} y1={frame.top - 5} y2={frame.bottom + 5} />
            <circle cx={x} cy={y} r={4.5} />
          </g>
        )}
      </svg>
      <TakeAway of="picture" name={list.title} />
    </figure>
  );
}

/** Runs of a kind that are listed; the longest. */
const mostRuns = 5;

function WrongHours({
  kinds,
  hours,
  onTake,
}: {
  kinds: readonly WrongKind[];
  hours: number;
  onTake: (hour: number) => void;
}) {
  return (
    <section className="wrong-hours" aria-label="hours in which something is wrong">
      <h3>
        Hours in which something is wrong <small>the longest runs; picked, the worst hour of a run is drawn</small>
      </h3>
      {kinds.length === 0 ? <p>none: all that is asked is held in every hour</p> : null}
      {kinds.map(({ what, hours: count, runs }) => (
        <div key={what}>
          <p>
            <span aria-hidden="true" className="sign">
              ◆
            </span>{" "}
            <strong>{count.toLocaleString("en-US")} h</strong> {what}
          </p>
          <ul>
            {runs.slice(0, mostRuns).map((run) => (
              <li key={run.key}>
                <button type="button" onClick={() => onTake(run.worst)}>
                  {runWords(run, hours)}
                </button>
              </li>
            ))}
            {runs.length > mostRuns ? <li className="quiet">and {runs.length - mostRuns} shorter</li> : null}
          </ul>
        </div>
      ))}
    </section>
  );
}

function runWords({ first, count }: WrongRun, hours: number): string {
  return count === 1 ? hourName(first, hours) : `${hourName(first, hours)}, ${count} h`;
}
