import { octaveBandChart } from "@oncethrough/engine/chart/octave-bands";
import { soundOf } from "@oncethrough/engine/unit/sound";
import { useMemo } from "react";
import type { SoundJob } from "#state/sound-job";
import { DrawnOrSaid } from "./drawn-or-said.tsx";
import { PaintedList, placedAt } from "./painted-list.tsx";
import { TakeAway } from "./take-away.tsx";
import { useBench, useRating } from "./use-bench.ts";
import { useWidth } from "./use-width.ts";

/** px: height over width, and its ends. */
const slope = 0.5;
const tallest = 360;
const shortest = 260;

/** Sound power by octave band where it leaves the unit, at the condition in hand, against the limits of the duty. */
export function OctaveView() {
  const [frame, width] = useWidth<HTMLDivElement>();
  const sound = useBench((bench) => bench.sound);
  const attempt = useBench((bench) => `${bench.condition} ${bench.sound?.text}`);
  return (
    <section className="part" aria-label="sound">
      <h2>
        Sound
        <small>an estimate; a promise needs a test</small>
      </h2>
      <TakeAway of="picture" name="sound by octave band" />
      <div ref={frame}>
        {sound === undefined || width === 0 ? null : (
          <DrawnOrSaid what="the chart of sound" attempt={attempt}>
            <Chart sound={sound} width={width} />
          </DrawnOrSaid>
        )}
      </div>
    </section>
  );
}

function Chart({ sound, width }: { sound: SoundJob; width: number }) {
  const rating = useRating();
  const { unit, duty } = sound.job;
  const height = Math.max(shortest, Math.min(tallest, Math.round(width * slope)));
  const list = useMemo(() => {
    const heard = rating?.solved === true ? soundOf(unit, rating) : undefined;
    const title = `Sound power, ${rating?.condition.name}`;
    return heard && octaveBandChart(heard, title, { width, height, limits: duty.soundLimits });
  }, [unit, duty, rating, width, height]);
  if (list === undefined) return <p className="quiet">the fan stands, or this condition is not solved</p>;
  return (
    <svg width={width} height={height} viewBox={`0 0 ${width} ${height}`} role="img" aria-label={list.title}>
      <PaintedList list={list} placing={placedAt(list, 1, 0, 0)} />
    </svg>
  );
}
