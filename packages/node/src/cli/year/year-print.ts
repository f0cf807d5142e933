import { printQuantity } from "@oncethrough/engine/quantity/print";
import { hourName } from "@oncethrough/engine/weather/calendar";
import { type ComparisonLine, compareYears } from "@oncethrough/engine/year/comparison";
import { meters, meterText } from "@oncethrough/engine/year/meter";
import type { Spread } from "@oncethrough/engine/year/uncertainty";
import { figureText } from "../figure-text.ts";
import { glued, wrapped } from "../ink.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Column, printTable } from "../table.ts";
import type { ToldYear } from "./year-output.ts";

/** A year of one job, for a person. */
export function printYear(told: ToldYear, weatherName: string, style: Style): string {
  const parts = [
    printHead(told, weatherName, style),
    printTotals(told, style),
    printCost(told, style),
    printMisses(told, style),
    printFreezing(told, style),
    printWatches(told, style),
    printRules(told, style),
    printRepresentative(told, style),
    printUncertainty(told, style),
    style.ink.quiet(
      wrapped(
        "pumps, controls, terminal reheat and what a plant loses are not counted; coils in frost, steam and their safeguards are for licensed practice and local codes",
        style.columns,
      ),
    ),
  ];
  return parts.filter((part) => part !== "").join("\n\n");
}

function printHead({ job, report, name }: ToldYear, weatherName: string, { ink, columns }: Style): string {
  const { hours, runningHours, unsolved, isSynthetic, notes } = report;
  const kind = isSynthetic ? "synthetic: " : "";
  const title = ink.strong(`${job.tag} · ${kind}every hour of ${weatherName || "the weather file"}`);
  const lost =
    unsolved.length === 0
      ? []
      : [
          ink.fail(
            `${unsolved.length} hours could not be solved, the first ${hourName(unsolved[0]!.hour, hours)}: ${unsolved[0]!.reason}; what follows is not a whole year`,
          ),
        ];
  const lines = [`${name}: the fan runs ${runningHours} of ${hours} hours`, ...lost, ...notes];
  return [title, ...lines.map((line) => wrapped(line, columns))].join("\n");
}

function printTotals({ report }: ToldYear, { ink, system }: Style): string {
  const columns: Column[] = [
    { name: "over the year", align: "left" },
    { name: "total", align: "right" },
    { name: "highest hour", align: "right" },
    { name: "ends", align: "left" },
    { name: "outdoors\ndry / wet bulb", align: "right" },
    { name: "at the duty's\nconditions", align: "right" },
  ];
  const rows = report.totals.map((each) => {
    const meter = meters.find(({ key }) => key === each.key)!;
    const rate = (value: number) => meterText(each.key, value, "rate", system);
    const outdoor = [each.outdoor.dryBulb, each.outdoor.wetBulb].map((value) =>
      printQuantity(value, "temperature", system).replace(/ .*/, ""),
    );
    return [
      meter.name,
      ink.strong(meterText(each.key, each.total, "total", system)),
      rate(each.peak),
      hourName(each.peakHour, report.hours),
      `${outdoor.join(" / ")} ${system === "ip" ? "°F" : "°C"}`,
      each.designPeak === 0 ? "–" : rate(each.designPeak),
    ];
  });
  const changes = report.filterChanges.map((hour) => hourName(hour, report.hours).replace(/ \d\d:\d\d$/, ""));
  const filters = `filters changed ${changes.length} ×${changes.length === 0 ? "" : `: ${changes.join(", ")}`}`;
  return `${printTable(columns, rows, ink)}\n${filters}`;
}

function money(cents: number, currency: string): string {
  return `${Math.round(cents / 100).toLocaleString("en-US")} ${currency}`;
}

function printCost({ report }: ToldYear, { ink, system }: Style): string {
  const { cost } = report;
  const columns: Column[] = [
    { name: "by the duty's tariffs", align: "left" },
    { name: `${cost.currency} a year`, align: "right" },
    { name: system === "ip" ? "lb of carbon dioxide" : "kg of carbon dioxide", align: "right" },
  ];
  const mass = (kilograms: number) =>
    Math.round(system === "ip" ? kilograms / 0.45359237 : kilograms).toLocaleString("en-US");
  const rows = cost.lines.map((line) => [
    line.name,
    Math.round(line.cost / 100).toLocaleString("en-US"),
    line.carbon === 0 ? "" : mass(line.carbon),
  ]);
  rows.push([
    ink.strong("in all"),
    ink.strong(Math.round(cost.cost / 100).toLocaleString("en-US")),
    ink.strong(mass(cost.carbon)),
  ]);
  return `${printTable(columns, rows, ink)}\npresent worth of ${cost.years} years: ${money(cost.presentWorth, cost.currency)}`;
}

function printMisses({ report }: ToldYear, { ink, system, columns }: Style): string {
  const { misses, hours } = report;
  if (misses.length === 0) return "everything that the duty asks is held in every hour";
  const lines = misses.map(({ section, what, quantity, hours: count, wanted, got, hour }) => {
    const say = (value: number) => glued(printQuantity(value, quantity, system));
    return wrapped(
      `${ink.fail(`${count} h`)} ${section}: ${what}; worst ${hourName(hour, hours)}, ${say(got)} for ${say(wanted)}`,
      columns,
      "  ",
    );
  });
  return [ink.quiet("asked and not held"), ...lines].join("\n");
}

function minutes(seconds: number): string {
  if (!Number.isFinite(seconds)) return "does not freeze";
  return seconds < 90 ? `${Math.round(seconds)} s` : `${Math.round(seconds / 60)} min`;
}

function printFreezing({ report }: ToldYear, { ink, system, columns }: Style): string {
  const { freezing, freezeTimes, hours } = report;
  if (freezing.length === 0) return "";
  const lines = freezing.map(({ section, hours: count, longest, longestFrom, margin, hour }) => {
    const said = Number.isFinite(margin)
      ? `smallest margin ${printQuantity(margin, "temperatureDifference", system)}, ${hourName(hour, hours)}`
      : "never in use in frost";
    const run = count === 0 ? "" : `, longest run ${longest} h from ${hourName(longestFrom, hours)}`;
    const text = `${section}: ${count} h of freeze exposure${run}; ${said}`;
    return wrapped(count > 0 ? ink.fail(text) : text, columns, "  ");
  });
  const times = freezeTimes.map(({ failure, section, firstIce, hour, air }) => {
    const where = `air ${printQuantity(air, "temperature", system)}, ${hourName(hour, hours)}`;
    return wrapped(
      `if ${failure}: ${section} ${Number.isFinite(firstIce) ? `has first ice after ${minutes(firstIce)}` : "does not freeze"} (${where})`,
      columns,
      "  ",
    );
  });
  return [ink.quiet("frost"), ...lines, ...times].join("\n");
}

function printWatches({ report }: ToldYear, { ink, columns, system }: Style): string {
  const lines = report.watches
    .filter(({ hour }) => hour >= 0)
    .map(({ name, hours, worst, hour, quantity }) => {
      const text = `${hours} h: ${name}; worst ${figureText(worst, quantity, system)}, ${hourName(hour, report.hours)}`;
      return wrapped(hours > 0 ? ink.fail(text) : text, columns, "  ");
    });
  return lines.length === 0 ? "" : [ink.quiet("watched while the fan runs"), ...lines].join("\n");
}

/** Rules shown besides those that are missed: the ones with the least left. */
const fewest = 6;

function printRules({ report }: ToldYear, { ink, system }: Style): string {
  const judged = report.findings.filter(({ margin }) => !Number.isNaN(margin));
  if (judged.length === 0) return "";
  const missed = judged.filter(({ outcome }) => outcome !== "pass");
  const near = judged.filter(({ outcome }) => outcome === "pass").slice(0, fewest);
  const columns: Column[] = [
    { name: "rule at its smallest margin", align: "left" },
    { name: "section", align: "left" },
    { name: "", align: "left" },
    { name: "value", align: "right" },
    { name: "limit", align: "right" },
    { name: "margin", unit: "%", align: "right" },
    { name: "hours\nmissed", align: "right" },
    { name: "ends", align: "left" },
  ];
  const rows = [...missed, ...near].map(({ entry, outcome, value, limit, margin, missed: count, at }) => {
    const { quantity } = entry.rule;
    const say = (figure: number) =>
      quantity === "flag" ? (figure > 0 ? "yes" : "no") : figureText(figure, quantity, system);
    const word = outcome === "pass" ? "held" : outcome === "fail" ? ink.fail("missed") : outcome;
    const time = at < 0 ? "–" : hourName(at, report.hours);
    return [entry.rule.id, entry.section, word, say(value), say(limit), (100 * margin).toFixed(0), String(count), time];
  });
  const rest = judged.length - missed.length - near.length;
  const more = rest > 0 ? `\n${rest} more are held with more to spare` : "";
  return `${printTable(columns, rows, ink)}${more}`;
}

function printRepresentative({ representative, report }: ToldYear, { ink, system, columns }: Style): string {
  if (representative === undefined) return "";
  const { hours, errors, missedHours } = representative;
  const said = errors.map(
    ({ key, error, full }) =>
      `${meters.find((each) => each.key === key)!.name} ${error < 0 ? "−" : "+"}${Math.abs(100 * error).toFixed(1)} % of ${meterText(key, full, "total", system)}`,
  );
  const missed = `hours with something missed ${missedHours.estimate.toFixed(0)} for ${missedHours.full}`;
  const head = `${hours.length} hours stand for ${report.hours}; what they tell against all hours:`;
  return [ink.quiet(head), wrapped([...said, missed].join("; "), columns, "  ")].join("\n");
}

function printUncertainty({ uncertainty, report }: ToldYear, { ink, system }: Style): string {
  if (uncertainty === undefined) return "";
  const { trials, seed, hours, heldShare, alwaysHeld, alwaysHeldError, totals, cost, freezeMargin, rules } =
    uncertainty;
  const columns: Column[] = [
    { name: `${trials} trials within tolerances, seed ${seed}`, align: "left" },
    { name: "5 of 100 below", align: "right" },
    { name: "middle", align: "right" },
    { name: "5 of 100 above", align: "right" },
  ];
  const row = (name: string, { low, middle, high }: Spread, say: (value: number) => string) => [
    name,
    say(low),
    ink.strong(say(middle)),
    say(high),
  ];
  const rows = [
    ...totals.map(({ key, spread }) =>
      row(meters.find((each) => each.key === key)!.name, spread, (value) => meterText(key, value, "total", system)),
    ),
    row("cost of a year", cost, (value) => money(value, report.cost.currency)),
    ...(Number.isFinite(freezeMargin.high)
      ? [row("smallest freeze margin", freezeMargin, (value) => printQuantity(value, "temperatureDifference", system))]
      : []),
    ...rules.map(({ entry, missed, spread }) =>
      row(
        `${entry.rule.id}, ${entry.section}: missed in ${(100 * missed).toFixed(0)} %`,
        spread,
        (value) => `${(100 * value).toFixed(0)} %`,
      ),
    ),
  ];
  const held = `leaving air is held at an hour with probability ${(100 * heldShare).toFixed(2)} %, in every hour of the year in ${(100 * alwaysHeld).toFixed(0)} ± ${(100 * alwaysHeldError).toFixed(0)} % of the trials`;
  const how = `each in ${hours} hours that stand for the year; drawn are: ${uncertainty.tolerances.map(({ name, spread }) => `${name} (${spread})`).join("; ")}`;
  return [wrapped(held, 100), printTable(columns, rows, ink), ink.quiet(wrapped(how, 100))].join("\n");
}

/** Several jobs side by side on one weather file; what the others differ by from the first stands below their figures. */
export function printComparison(years: readonly ToldYear[], { ink, system }: Style): string {
  const columns: Column[] = [
    { name: "side by side", align: "left" },
    ...years.map(({ name }): Column => ({ name: shortened(name), align: "right" })),
  ];
  const rows = compareYears(years.map(({ report }) => report)).flatMap((line) => {
    const says = line.values.map((value, place) => said(line, value, years[place]!, system));
    const changes = line.values.map((value, place) =>
      place === 0 || value === line.values[0] || (line.measure === "money" && line.currency === undefined)
        ? ""
        : ink.quiet(changeText(line, value - line.values[0]!, years[place]!, system)),
    );
    const own = [line.name, ...says];
    return changes.every((text) => text === "") ? [own] : [own, ["", ...changes]];
  });
  const mixed = new Set(years.map(({ report }) => report.cost.currency)).size > 1;
  const growth = years.map(({ job, name }) => {
    const { years: count, discountRate, priceGrowth } = job.duty.tariffs;
    return `${shortened(name)} ${count} years, interest ${(100 * discountRate).toFixed(1)} %, prices growing ${(100 * priceGrowth).toFixed(1)} % a year`;
  });
  const remarks = [
    ...(mixed ? ["the jobs count in different currencies: their money is not compared"] : []),
    `present worth: ${growth.join("; ")}`,
  ];
  return [printTable(columns, rows, ink), ...remarks.map((text) => ink.quiet(wrapped(text, 100)))].join("\n");
}

function said(
  { measure, meter, key }: ComparisonLine,
  value: number,
  { report }: ToldYear,
  system: "ip" | "si",
): string {
  if (measure === "count") return value.toLocaleString("en-US");
  if (measure === "money") return money(value, report.cost.currency);
  if (meter === undefined) return printQuantity(value, measure, system);
  return value === 0 ? "–" : meterText(meter, value, key.endsWith("Peak") ? "rate" : "total", system);
}

function changeText(line: ComparisonLine, change: number, told: ToldYear, system: "ip" | "si"): string {
  return `${change > 0 ? "+" : "−"}${said(line, Math.abs(change), told, system)}`;
}

function shortened(name: string): string {
  const base = name.replace(/^.*[/\\]/, "").replace(/\.ya?ml$/, "");
  return base.length > 28 ? `${base.slice(0, 27)}…` : base;
}
