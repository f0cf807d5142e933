import { sitePressure } from "@oncethrough/engine/duty/standard-conditions";
import { readWeather } from "@oncethrough/engine/weather/read-weather";
import type { WeatherYear } from "@oncethrough/engine/weather/weather-year";
import { useContext, useId, useState } from "react";
import { useBench } from "#view/use-bench";
import { useWork, WorkContext } from "#view/use-work";
import { YearHand, YearPictures } from "#view/year-hand.tsx";
import { YearFigures } from "./year-figures.tsx";
import { YearTrials } from "./year-trials.tsx";
import "./work-words.css";
import "./year.css";

/** A weather file in hand, by the name under which the worker knows it. */
interface Chosen {
  readonly name: string;
  readonly weather: WeatherYear;
}

/** The year of the job in hand, in the weather of a file or in one made up from its design days. */
export default function YearPanel() {
  const desk = useContext(WorkContext);
  const text = useBench((bench) => bench.sound!.text);
  const duty = useBench((bench) => bench.sound!.job.duty);
  const [chosen, choose] = useState<Chosen | undefined>(undefined);
  const [problem, say] = useState("");
  const work = useWork<"year">({ kind: "year", text, weather: chosen?.name });
  const take = async (file: File | undefined) => {
    if (file === undefined) return;
    const reading = readWeather(await textOf(file), { pressure: sitePressure(duty) });
    if (!reading.ok) {
      const { line, what, allowed } = reading.problem;
      return say(`${file.name}${line > 0 ? `, line ${line}` : ""}: ${what}; needed: ${allowed}`);
    }
    say("");
    const name = `${file.name} ${file.size} ${file.lastModified}`;
    desk?.lend(name, reading.weather);
    choose({ name, weather: reading.weather });
  };
  const { now, latest } = work;
  const isCurrent = now?.is === "done";
  return (
    <div className="year">
      <WeatherChoice chosen={chosen} onFile={(file) => void take(file)} onSynthetic={() => choose(undefined)} />
      {problem === "" ? null : (
        <p className="failing" role="alert">
          <span aria-hidden="true">◆</span> {problem}
        </p>
      )}
      {now?.is === "under way" ? (
        <p className="work-words">
          <progress aria-label="solving the hours" max={1} value={now.share} />
          <button type="button" onClick={work.stop}>
            stop
          </button>
          <span>
            {Math.floor(100 * now.share)} % of the hours
            {latest === undefined ? "" : "; what stands below is of the job before"}
          </span>
        </p>
      ) : null}
      {now?.is === "stopped" || now?.is === "failed" ? (
        <p className="work-words" role="alert">
          {now.is === "failed" ? (
            <span className="failing">◆ no year: {now.problem}</span>
          ) : (
            "stopped; part of a year is not shown"
          )}
          <button type="button" onClick={work.again}>
            solve again
          </button>
        </p>
      ) : null}
      {latest === undefined ? null : (
        <div className="year-body" data-current={isCurrent}>
          <YearHand result={latest} weather={chosen?.weather} />
          <YearFigures result={latest} />
          <YearTrials weather={chosen?.name} currency={latest.report.cost.currency} />
          <YearPictures result={latest} />
        </div>
      )}
    </div>
  );
}

/** Weather files are text of one byte to a letter; a stray letter of a station's name does no harm. */
async function textOf(file: File): Promise<string> {
  return new TextDecoder("windows-1252").decode(await file.arrayBuffer());
}

interface ChoiceProps {
  readonly chosen: Chosen | undefined;
  readonly onFile: (file: File | undefined) => void;
  readonly onSynthetic: () => void;
}

function WeatherChoice({ chosen, onFile, onSynthetic }: ChoiceProps) {
  const id = useId();
  return (
    <div className="year-weather">
      <p>
        {chosen === undefined ? (
          <>
            <strong className="synthetic">synthetic year</strong> made up from the duty's design days: no weather that
            ever was
          </>
        ) : (
          <>
            <strong>{chosen.weather.place.name || "the weather file"}</strong>{" "}
            {chosen.weather.hours.toLocaleString("en-US")} hours
          </>
        )}
      </p>
      <label htmlFor={id}>weather file, EPW or CSV</label>
      <input
        id={id}
        type="file"
        accept=".epw,.csv,text/csv,text/plain"
        onChange={(event) => onFile(event.target.files?.[0])}
      />
      {chosen === undefined ? null : (
        <button type="button" onClick={onSynthetic}>
          synthetic year
        </button>
      )}
    </div>
  );
}
