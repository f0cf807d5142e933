import { meters, meterText } from "@oncethrough/engine/year/meter";
import type { Spread } from "@oncethrough/engine/year/uncertainty";
import { useId, useState } from "react";
import { printFigure } from "#state/figures";
import { TakeAway } from "#view/take-away.tsx";
import { useBench } from "#view/use-bench";
import { useWork } from "#view/use-work";
import type { UncertaintyResult } from "#work/task";
import { WorkWords } from "./work-words.tsx";

/** Trials that are made when somebody asks. */
const trials = 64;
const firstSeed = 1;

/** What the year would be with the tolerances of what is built and supplied: seeded trials, made when they are asked for. */
export function YearTrials({ weather, currency }: { weather: string | undefined; currency: string }) {
  const text = useBench((bench) => bench.sound!.text);
  const id = useId();
  const [typed, setTyped] = useState(String(firstSeed));
  const [asked, ask] = useState<{ readonly text: string; readonly seed: number } | undefined>(undefined);
  const seed = /^\d{1,9}$/.test(typed.trim()) ? Number(typed) : undefined;
  const isAsked = asked?.text === text;
  const work = useWork<"uncertainty">(
    isAsked ? { kind: "uncertainty", text, weather, trials, seed: asked.seed } : undefined,
  );
  const { latest } = work;
  return (
    <section className="year-trials" aria-label="the year within tolerances">
      <h3>
        Within tolerances <small>coils, fan, fouling, filters and utilities as they may turn out</small>
      </h3>
      {latest === undefined || !isAsked ? null : <TakeAway of="table" name="the year within tolerances" />}
      <form
        onSubmit={(event) => {
          event.preventDefault();
          if (seed !== undefined) ask({ text, seed });
        }}
      >
        <label htmlFor={id}>seed</label>
        <input
          id={id}
          className="typed"
          value={typed}
          size={6}
          inputMode="numeric"
          aria-invalid={seed === undefined}
          onChange={(event) => setTyped(event.target.value)}
        />
        <button type="submit" disabled={seed === undefined}>
          make {trials} trials
        </button>
        {seed === undefined ? <span className="failing">◆ a whole number</span> : null}
      </form>
      <WorkWords work={work} isStale={false} doing="making trials" />
      {latest === undefined || !isAsked ? null : <TrialsTable told={latest} currency={currency} />}
    </section>
  );
}

function TrialsTable({ told, currency }: { told: UncertaintyResult; currency: string }) {
  const system = useBench((bench) => bench.system);
  const share = (value: number) => `${Math.round(100 * value)} %`;
  const money = (cents: number) => `${Math.round(cents / 100).toLocaleString("en-US")} ${currency}`;
  const row = (name: string, { low, middle, high }: Spread, say: (value: number) => string) => (
    <tr key={name}>
      <th scope="row">{name}</th>
      <td>{say(low)}</td>
      <td>
        <strong>{say(middle)}</strong>
      </td>
      <td>{say(high)}</td>
    </tr>
  );
  return (
    <>
      <p>
        leaving air is held at an hour with probability {(100 * told.heldShare).toFixed(2)} %, in every hour of the year
        in {share(told.alwaysHeld)} ± {share(told.alwaysHeldError)} of the trials
      </p>
      <table>
        <thead>
          <tr>
            <th scope="col">
              {told.trials} trials, seed {told.seed}
            </th>
            <th scope="col">5 of 100 below</th>
            <th scope="col">middle</th>
            <th scope="col">5 of 100 above</th>
          </tr>
        </thead>
        <tbody>
          {told.totals.map(({ key, spread }) =>
            row(meters.find((each) => each.key === key)!.name, spread, (value) =>
              meterText(key, value, "total", system),
            ),
          )}
          {row("cost of a year", told.cost, money)}
          {Number.isFinite(told.freezeMargin.high)
            ? row("smallest freeze margin", told.freezeMargin, (value) =>
                printFigure(value, "temperatureDifference", system),
              )
            : null}
          {told.rules.map(({ rule, section, missed, spread }) =>
            row(`${rule}, ${section}: missed in ${share(missed)}`, spread, share),
          )}
        </tbody>
      </table>
      <p className="quiet">
        each in {told.hours} hours that stand for the year; drawn are:{" "}
        {told.tolerances.map(({ name, spread }) => `${name} (${spread})`).join("; ")}
      </p>
    </>
  );
}
