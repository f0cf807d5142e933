import type { QuantityKind } from "@oncethrough/engine/quantity/kind";
import { printInUnit, printQuantity } from "@oncethrough/engine/quantity/print";
import { hourName } from "@oncethrough/engine/weather/calendar";
import { type MeterKey, meters } from "@oncethrough/engine/year/meter";
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

/** Units in which totals are read. */
const totalUnits: Readonly<Record<"ip" | "si", Partial<Record<MeterKey, string>>>> = {
  ip: { chilledWater: "ton·h", electricity: "kWh", steamHeat: "MMBtu", heatingWater: "MMBtu", recovered: "MMBtu" },
  si: { chilledWater: "kWh", electricity: "kWh", steamHeat: "kWh", heatingWater: "kWh", recovered: "kWh" },
};
const peakUnits: Readonly<Record<"ip" | "si", Partial<Record<MeterKey, string>>>> = {
  ip: { chilledWater: "tons", steamHeat: "MBH" },
  si: {},
};

/** A number with thousands apart and no more than four digits that count. */
function grouped(text: string): string {
  return text.replace(/^-?[\d.,]+/, (digits) => {
    const value = Number(digits.replaceAll(",", ""));
    const most = Math.abs(value) >= 1000 ? 0 : 3 - Math.max(0, Math.floor(Math.log10(Math.max(1e-9, Math.abs(value)))));
    return value.toLocaleString("en-US", { maximumFractionDigits: Math.max(0, Math.min(3, most)) });
  });
}

function inUnit(value: number, kind: QuantityKind, unit: string | undefined, system: "ip" | "si"): string {
  return unit === undefined ? printQuantity(value, kind, system) : grouped(printInUnit(value, kind, unit));
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
    const rate = (value: number) => inUnit(value, meter.rate, peakUnits[system][each.key], system);
    const outdoor = [each.outdoor.dryBulb, each.outdoor.wetBulb].map((value) =>
      printQuantity(value, "temperature", system).replace(/ .*/, ""),
    );
    return [
      meter.name,
      ink.strong(inUnit(each.total, meter.total, totalUnits[system][each.key], system)),
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

/** Several jobs side by side on one weather file. */
export function printComparison(years: readonly ToldYear[], { ink, system }: Style): string {
  const columns: Column[] = [
    { name: "side by side", align: "left" },
    ...years.map(({ name }): Column => ({ name: shortened(name), align: "right" })),
  ];
  const keys = meters.filter(({ key }) => years.some(({ report }) => report.totals.some((each) => each.key === key)));
  const rows = keys.map((meter) => [
    meter.name,
    ...years.map(({ report }) => {
      const total = report.totals.find((each) => each.key === meter.key);
      return total === undefined ? "–" : inUnit(total.total, meter.total, totalUnits[system][meter.key], system);
    }),
  ]);
  const line = (name: string, say: (told: ToldYear) => string) => rows.push([name, ...years.map(say)]);
  line("cost of a year", ({ report }) => money(report.cost.cost, report.cost.currency));
  line("present worth of running", ({ report }) => money(report.cost.presentWorth, report.cost.currency));
  line("hours with something missed", ({ report }) => String(Math.max(0, ...report.misses.map(({ hours }) => hours))));
  line("hours of freeze exposure", ({ report }) => String(Math.max(0, ...report.freezing.map(({ hours }) => hours))));
  line("rules missed", ({ report }) => String(report.findings.filter(({ outcome }) => outcome === "fail").length));
  return printTable(columns, rows, ink);
}

function shortened(name: string): string {
  const base = name.replace(/^.*[/\\]/, "").replace(/\.ya?ml$/, "");
  return base.length > 28 ? `${base.slice(0, 27)}…` : base;
}
