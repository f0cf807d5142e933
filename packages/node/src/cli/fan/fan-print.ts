import type { QuantityKind } from "@oncethrough/engine/quantity/kind";
import { displayUnit, printNumber, printQuantity } from "@oncethrough/engine/quantity/print";
import type { FigureLine, SectionRating } from "@oncethrough/engine/section/contract";
import { octaveBands } from "@oncethrough/engine/standard/fan-sound";
import { printDeclared } from "../declared-print.ts";
import { figureText } from "../figure-text.ts";
import { glued, separator, wrapped } from "../ink.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Column, printTable } from "../table.ts";
import type { FanOutput, FanPoint } from "./fan-output.ts";
import {
  printElectrical,
  printLargestFlows,
  printMechanics,
  printOneFanOut,
  printPowerAllowances,
  printPowerLimit,
  printRange,
} from "./fan-standing-print.ts";

/** What the fan is, where it works at every condition, and all of it at one. */
export function printFan(output: FanOutput, figures: readonly FigureLine<SectionRating>[], style: Style): string {
  const parts = [
    printBuilt(output, style),
    printPoints(output, style),
    printPoint(output, figures, style),
    printSound(output, style),
    printRange(output, style),
    printLargestFlows(output, style),
    printOneFanOut(output, style),
    printMechanics(output, style),
    printElectrical(output, style),
    printPowerLimit(output, style),
    printPowerAllowances(output, style),
    output.declared === undefined ? "" : printDeclared(output.declared, style),
    printAlternatives(output, style),
  ];
  return parts.filter((part) => part !== "").join("\n\n");
}

function printBuilt({ tag, section, fan }: FanOutput, { system, ink, columns }: Style): string {
  const say = (value: number, quantity: QuantityKind) => glued(printQuantity(value, quantity, system));
  const words = [
    `${fan.count} × ${say(fan.diameter, "length")} ${fan.arrangement}`,
    `class ${fan.class} to ${say(fan.tipSpeedLimit, "velocity")}`,
    `${fan.drive} drive`,
    `motor ${say(fan.motorPower, "shaftPower")}`,
    fan.speedControlled ? "speed controlled" : "fixed speed",
    `${say(fan.mass, "mass")} each with motor and base, about`,
  ];
  return `${ink.strong(`${tag} · ${section}`)}\n${wrapped(words.join(separator), columns)}\n${ink.quiet(fan.wheel)}`;
}

function printPoints({ points, condition }: FanOutput, { system, ink }: Style): string {
  const columns: Column[] = [
    { name: "condition", align: "left" },
    { name: "airflow\neach", unit: displayUnit("actualAirflow", system), align: "right" },
    { name: "speed", unit: displayUnit("rotationalSpeed", system), align: "right" },
    { name: "static", unit: displayUnit("pressureDifference", system), align: "right" },
    { name: "total", unit: displayUnit("pressureDifference", system), align: "right" },
    { name: "shaft\neach", unit: displayUnit("shaftPower", system), align: "right" },
    { name: "mains", unit: displayUnit("electricPower", system), align: "right" },
    { name: "of\npeak", unit: "%", align: "right" },
    { name: "of steady\nlimit", unit: "%", align: "right" },
    { name: "motor", unit: "%", align: "right" },
  ];
  const rows = points
    .filter((point) => !point.solved || (point.figures.fanSpeed ?? 0) > 0)
    .map((point) => pointRow(point, point.condition === condition, system, ink));
  return printTable(columns, rows, ink);
}

function pointRow(point: FanPoint, chosen: boolean, system: Style["system"], ink: Style["ink"]): string[] {
  if (!point.solved) return [point.condition, ...Array<string>(8).fill("–"), ink.fail("not solved")];
  const say = (figure: string, quantity: QuantityKind) => printNumber(point.figures[figure] ?? 0, quantity, system);
  const steady = say("flowToStable", "share");
  return [
    chosen ? ink.strong(point.condition) : point.condition,
    say("flowPerFan", "actualAirflow"),
    say("fanSpeed", "rotationalSpeed"),
    say("staticPressure", "pressureDifference"),
    say("fanTotalPressure", "pressureDifference"),
    say("shaftPower", "shaftPower"),
    say("electricPower", "electricPower"),
    say("pressureToPeak", "share"),
    (point.figures.flowToStable ?? 0) < 1 ? ink.fail(`${steady} unsteady`) : steady,
    say("motorLoad", "share"),
  ];
}

function printPoint(
  { points, condition }: FanOutput,
  figures: readonly FigureLine<SectionRating>[],
  { system, ink, columns }: Style,
): string {
  const values = points.find((point) => point.condition === condition)?.figures ?? {};
  const words = figures.flatMap(({ figure, name, quantity }) => {
    const value = values[figure];
    return value === undefined ? [] : [`${name} ${glued(figureText(value, quantity, system))}`];
  });
  return `${ink.quiet(`at ${condition}`)}\n${wrapped(words.join(separator), columns)}`;
}

function printSound({ sound }: FanOutput, { ink, columns }: Style): string {
  if (sound === undefined) return "";
  const table = printTable(
    [
      { name: "sound power", unit: "dB", align: "left" },
      ...octaveBands.map((band): Column => ({ name: String(band), unit: "Hz", align: "right" })),
      { name: "A", unit: "dB(A)", align: "right" },
    ],
    [
      [
        "inlet, and outlet alike",
        ...sound.outlet.map((level) => level.toFixed(0)),
        ink.strong(sound.weighted.toFixed(0)),
      ],
    ],
    ink,
  );
  const words = `±${sound.uncertainty} dB; blades pass at ${sound.bladePass.toFixed(0)} Hz; ${sound.certainty} [${sound.source}]`;
  return `${table}\n${ink.quiet(wrapped(words, columns))}`;
}

function printAlternatives({ alternatives }: FanOutput, { system, ink }: Style): string {
  if (alternatives === undefined) return "";
  const { looked, candidates } = alternatives;
  if (candidates.length === 0) return `none of ${looked} fans meets this point in this cabinet`;
  const columns: Column[] = [
    { name: "fans", align: "left" },
    { name: "wheel", unit: displayUnit("length", system), align: "right" },
    { name: "class", align: "right" },
    { name: "drive", align: "left" },
    { name: "speed", unit: displayUnit("rotationalSpeed", system), align: "right" },
    { name: "motor", unit: displayUnit("shaftPower", system), align: "right" },
    { name: "mains", unit: displayUnit("electricPower", system), align: "right" },
    { name: "static\neff.", unit: "%", align: "right" },
    { name: "of\npeak", unit: "%", align: "right" },
    { name: "sound", unit: "dB(A)", align: "right" },
    { name: "width", unit: displayUnit("length", system), align: "right" },
    { name: "length", unit: displayUnit("length", system), align: "right" },
  ];
  const rows = candidates.map((each) => [
    `${each.count} × ${each.wheel.replace(/^typical airfoil /, "")}`,
    printNumber(each.diameter, "length", system),
    each.class,
    each.drive,
    printNumber(each.speed, "rotationalSpeed", system),
    printNumber(each.motorPower, "shaftPower", system),
    ink.strong(printNumber(each.electricPower, "electricPower", system)),
    printNumber(each.staticEfficiency, "share", system),
    printNumber(each.pressureToPeak, "share", system),
    each.sound.toFixed(0),
    printNumber(each.width, "length", system),
    printNumber(each.length, "length", system),
  ]);
  const words = `alternatives for this point, least power first; ${looked} looked at`;
  return `${ink.quiet(words)}\n${printTable(columns, rows, ink)}`;
}
