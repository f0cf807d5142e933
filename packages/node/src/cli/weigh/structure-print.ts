import { allowedRelative } from "@oncethrough/engine/arrangement/panel-load";
import { displayUnit, printNumber } from "@oncethrough/engine/quantity/print";
import { separator, wrapped } from "../ink.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Column, printTable } from "../table.ts";
import { sayer } from "./say.ts";
import type { WeighOutput } from "./weigh-output.ts";

/** Traps and rail, panels, springs, walls and leakage. */
export function printStructure(output: WeighOutput, style: Style): readonly string[] {
  return [
    printTraps(output, style),
    printPanels(output, style),
    printSprings(output, style),
    printWalls(output, style),
    printLeakage(output, style),
  ];
}

function printTraps({ traps }: WeighOutput, style: Style): string {
  if (traps.length === 0) return "";
  const { system, ink } = style;
  const columns: Column[] = [
    { name: "trap of", align: "left" },
    { name: "pressure", unit: displayUnit("pressureDifference", system), align: "right" },
    { name: "at", align: "left" },
    { name: "drop", unit: displayUnit("length", system), align: "right" },
    { name: "seal", unit: displayUnit("length", system), align: "right" },
    { name: "depth", unit: displayUnit("length", system), align: "right" },
    { name: "pipe", align: "left" },
    { name: "rail\nneeded", unit: displayUnit("length", system), align: "right" },
    { name: "rail", unit: displayUnit("length", system), align: "right" },
    { name: "", align: "left" },
  ];
  const length = (value: number) => printNumber(value, "length", system);
  const rows = traps.map((trap) => [
    trap.section,
    printNumber(trap.pressure, "pressureDifference", system),
    trap.condition,
    length(trap.drop),
    length(trap.seal),
    ink.strong(length(trap.depth)),
    trap.pipe,
    length(trap.railNeeded),
    length(trap.rail),
    trap.fits ? "fits" : ink.fail("too low"),
  ]);
  const lost = traps.filter((trap) => trap.losesSealAtShutOff).map((trap) => trap.section);
  const advice =
    lost.length === 0
      ? []
      : [
          wrapped(
            `against closed dampers the fan draws the seal out of the trap of ${lost.join(", ")}: interlock fan and dampers, and refill the trap before starting again`,
            style.columns,
          ),
        ];
  return [printTable(columns, rows, ink), ...advice].join("\n");
}

function printPanels({ panels, shutOff }: WeighOutput, style: Style): string {
  const { system, ink } = style;
  const pressure = displayUnit("pressureDifference", system);
  const columns: Column[] = [
    { name: "panels of", align: "left" },
    { name: "short side", unit: displayUnit("length", system), align: "right" },
    { name: "running", unit: pressure, align: "right" },
    { name: "gives", unit: displayUnit("smallLength", system), align: "right" },
    { name: "of span", align: "right" },
    { name: "shut-off", unit: pressure, align: "right" },
    { name: "gives", unit: displayUnit("smallLength", system), align: "right" },
    { name: "of span", align: "right" },
    { name: "class", align: "left" },
  ];
  const rows = panels.map((panel) => [
    panel.section,
    printNumber(panel.shortSide, "length", system),
    printNumber(panel.pressure, "pressureDifference", system),
    printNumber(panel.deflection, "smallLength", system),
    limited(panel.relative, style),
    printNumber(panel.shutOff, "pressureDifference", system),
    printNumber(panel.shutOffDeflection, "smallLength", system),
    panel.isLarge ? `${part(panel.shutOffRelative)} at most` : limited(panel.shutOffRelative, style),
    panel.deflectionClass,
  ]);
  const say = sayer(style);
  const words = `block-tight, the fan makes ${say(shutOff.pressure, "pressureDifference")} at the speed of ${shutOff.condition}; owners commonly ask for ${part(allowedRelative)} of the span at most`;
  return `${printTable(columns, rows, ink)}\n${ink.quiet(wrapped(words, style.columns))}`;
}

function limited(share: number, { ink }: Style): string {
  return share > allowedRelative ? ink.fail(part(share)) : part(share);
}

function part(share: number): string {
  return share < 1e-5 ? "–" : `1/${Math.round(1 / share)}`;
}

function printSprings({ springs }: WeighOutput, style: Style): string {
  if (springs.length === 0) return "";
  const say = sayer(style);
  const alike = springs.filter((each) => Math.abs(each.mass - springs[0]!.mass) < 0.01);
  const shown = alike.length === springs.length ? springs.slice(0, 1) : springs;
  const lines = shown.map((fan) => {
    const points = fan.points.map(({ mass, stiffness }) => `${say(mass, "mass")} (${say(stiffness, "stiffness")})`);
    const words = [
      `${say(fan.mass, "mass")} at ${say(fan.deflection, "length")}, ${say(fan.naturalFrequency, "frequency")}`,
      `points ${points.join(", ")}`,
      `pass on ${percent(fan.atLowest)} at ${say(fan.lowestSpeed, "rotationalSpeed")}, ${percent(fan.atHighest)} at ${say(fan.highestSpeed, "rotationalSpeed")}`,
      `thrust ${say(fan.thrust, "force")} moves it ${say(fan.thrustTravel, "smallLength")}${fan.needsRestraint ? ", a thrust restraint is usual" : ""}`,
    ];
    const name = shown.length < springs.length ? `each of ${springs.length}` : fan.fan;
    return wrapped(`${name}  ${words.join(separator)}`, style.columns, "  ");
  });
  return [style.ink.quiet("springs"), ...lines].join("\n");
}

function percent(share: number): string {
  return `${(100 * share).toPrecision(2)} %`;
}

function printWalls({ transmission }: WeighOutput, style: Style): string {
  const say = sayer(style);
  const words = [
    `transmittance ${say(transmission.panel, "heatTransferCoefficient")} panel, ${say(transmission.whole, "heatTransferCoefficient")} with edges, ${say(transmission.local, "heatTransferCoefficient")} at the frame`,
    ...(transmission.gain > 0 ? [`gains ${say(transmission.gain, "power")} (${transmission.gainAt})`] : []),
    ...(transmission.loss > 0 ? [`loses ${say(transmission.loss, "power")} (${transmission.lossAt})`] : []),
  ];
  const faces = transmission.faces.map((face) => {
    const figures = `${say(face.face, "temperature")} against a dew point of ${say(face.dewPoint, "temperature")}`;
    const words = `${face.side} of ${face.section} (${face.condition}): ${figures}, at the frame`;
    return face.margin < 0
      ? style.ink.fail(wrapped(`${words}: sweats`, style.columns, "  "))
      : wrapped(words, style.columns, "  ");
  });
  return [style.ink.quiet("walls"), wrapped(words.join(separator), style.columns), ...faces].join("\n");
}

function printLeakage({ leakage }: WeighOutput, style: Style): string {
  const say = sayer(style);
  const words = [
    `class ${leakage.leakageClass} (EN 1886: ${leakage.europeanClass}) on ${say(leakage.area, "area")}`,
    `${say(leakage.flow, "actualAirflow")} at the worst of each section, ${hundredths(leakage.share)} of the airflow`,
    `whole casing at ${say(leakage.testPressure, "pressureDifference")}: ${hundredths(leakage.testShare)}`,
    `an open hole of ${say(leakage.openArea, "area")} leaks as much`,
  ];
  return [style.ink.quiet("casing leakage"), wrapped(words.join(separator), style.columns)].join("\n");
}

function hundredths(share: number): string {
  return `${(100 * share).toFixed(2)} %`;
}
