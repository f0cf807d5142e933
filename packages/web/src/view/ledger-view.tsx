import { ledgerChart } from "@oncethrough/engine/chart/ledger-chart";
import { pressureLedger } from "@oncethrough/engine/unit/ledger";
import { useMemo } from "react";
import type { SoundJob } from "#state/sound-job";
import { DrawnOrSaid } from "./drawn-or-said.tsx";
import { PaintedList, placedAt } from "./painted-list.tsx";
import { TakeAway } from "./take-away.tsx";
import { useBench, useRating } from "./use-bench.ts";
import { useEasedList } from "./use-eased-list.ts";
import { useWidth } from "./use-width.ts";

/** What the fan's pressure is spent on at the condition in hand. */
export function LedgerView() {
  const [frame, width] = useWidth<HTMLDivElement>();
  const sound = useBench((bench) => bench.sound);
  const attempt = useBench((bench) => `${bench.condition} ${bench.sound?.text}`);
  return (
    <section className="part" aria-label="pressure ledger">
      <h2>Pressure ledger</h2>
      <TakeAway of="picture" name="pressure ledger" />
      <div ref={frame}>
        {sound === undefined || width === 0 ? null : (
          <DrawnOrSaid what="the pressure ledger" attempt={attempt}>
            <Chart sound={sound} width={width} />
          </DrawnOrSaid>
        )}
      </div>
    </section>
  );
}

function Chart({ sound, width }: { sound: SoundJob; width: number }) {
  const system = useBench((bench) => bench.system);
  const rating = useRating();
  const { unit } = sound.job;
  const drawn = useMemo(
    () =>
      rating?.solved !== true
        ? undefined
        : ledgerChart(pressureLedger(unit, rating), `Pressure ledger, ${rating.condition.name}`, { width, system }),
    [unit, rating, system, width],
  );
  const scale = drawn?.items.filter(({ key }) => key.startsWith("ledger-tick")).length;
  const list = useEasedList(drawn, `${width} ${system} ${scale} ${drawn?.box.height}`) ?? drawn;
  if (drawn === undefined || list === undefined) return <p className="quiet">this condition is not solved</p>;
  return (
    <svg
      width={width}
      height={drawn.box.height}
      viewBox={`0 0 ${width} ${drawn.box.height}`}
      role="img"
      aria-label={drawn.title}
    >
      <PaintedList list={list} placing={placedAt(drawn, 1, 0, 0)} />
    </svg>
  );
}
