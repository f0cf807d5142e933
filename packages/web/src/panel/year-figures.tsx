import { hourName } from "@oncethrough/engine/weather/calendar";
import { meters, meterText } from "@oncethrough/engine/year/meter";
import { memo } from "react";
import { printFigure } from "#state/figures";
import { TakeAway } from "#view/take-away.tsx";
import { useBench } from "#view/use-bench";
import type { YearResult } from "#work/task";

/** What the year comes to: each utility with its peak against the job's own conditions, cost, frost, rules. */
export const YearFigures = memo(function YearFigures({ result }: { result: YearResult }) {
  const system = useBench((bench) => bench.system);
  const { report, rules, representative } = result;
  const { cost, hours } = report;
  const money = (cents: number) => `${Math.round(cents / 100).toLocaleString("en-US")} ${cost.currency}`;
  return (
    <div className="year-figures" data-part="">
      <TakeAway of="table" name="the year by utility" />
      {report.unsolved.length === 0 ? null : (
        <p className="failing" role="alert">
          <span aria-hidden="true">◆</span> {report.unsolved.length} hours could not be solved: these are not the sums
          of a year
        </p>
      )}
      <table>
        <thead>
          <tr>
            <th scope="col">over the year</th>
            <th scope="col">total</th>
            <th scope="col">highest hour</th>
            <th scope="col">when, outdoors</th>
            <th scope="col">at the job's conditions</th>
          </tr>
        </thead>
        <tbody>
          {report.totals.map(({ key, total, peak, peakHour, outdoor, designPeak }) => (
            <tr key={key}>
              <th scope="row">{meters.find((each) => each.key === key)?.name}</th>
              <td>
                <strong>{meterText(key, total, "total", system)}</strong>
              </td>
              <td>{meterText(key, peak, "rate", system)}</td>
              <td>
                {hourName(peakHour, hours)}, {printFigure(outdoor.dryBulb, "temperature", system)} /{" "}
                {printFigure(outdoor.wetBulb, "temperature", system)} wet
              </td>
              <td>{designPeak === 0 ? "–" : meterText(key, designPeak, "rate", system)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <dl>
        <div>
          <dt>cost of a year</dt>
          <dd>{money(cost.cost)}</dd>
        </div>
        <div>
          <dt>present worth of {cost.years} years</dt>
          <dd>{money(cost.presentWorth)}</dd>
        </div>
        <div>
          <dt>filters changed</dt>
          <dd>{report.filterChanges.length} ×</dd>
        </div>
        {report.freezing.map(({ section, hours: count, longest }) => (
          <div key={section}>
            <dt>{section}, freeze exposure</dt>
            <dd>{count === 0 ? "none" : `${count} h, ${longest} h in a row`}</dd>
          </div>
        ))}
        {report.freezeTimes.map(({ failure, section, firstIce }) => (
          <div key={`${failure} ${section}`}>
            <dt>
              {section}: first ice if {failure}
            </dt>
            <dd>{Number.isFinite(firstIce) ? minutes(firstIce) : "does not freeze"}</dd>
          </div>
        ))}
      </dl>
      {rules.length === 0 ? null : (
        <p>
          rules missed in some hour:{" "}
          {rules
            .map(({ rule, section, missed }) => `${rule} (${section}, ${missed.toLocaleString("en-US")} h)`)
            .join("; ")}
        </p>
      )}
      <p className="quiet">
        {representative.hours.length} hours that stand for the year tell against all {hours.toLocaleString("en-US")}:{" "}
        {representative.errors.map(errorWords).join(", ")}
      </p>
      <p className="quiet">
        {[
          ...report.notes,
          "pumps, controls, terminal reheat and what a plant loses are not counted; coils in frost, steam and their safeguards are for licensed practice and local codes",
        ].join("; ")}
      </p>
    </div>
  );
});

function errorWords({ key, error }: YearResult["representative"]["errors"][number]): string {
  const name = meters.find((each) => each.key === key)?.name;
  return `${name} ${error < 0 ? "−" : "+"}${Math.abs(100 * error).toFixed(1)} %`;
}

function minutes(seconds: number): string {
  return seconds < 90 ? `${Math.round(seconds)} s` : `${Math.round(seconds / 60)} min`;
}
