import { displayUnit, printNumber, printQuantity } from "@oncethrough/engine/quantity/print";
import { standardAirDensity } from "@oncethrough/engine/quantity/standard-air";
import { glued, wrapped } from "../ink.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Column, printTable } from "../table.ts";
import type { DampersOutput } from "./dampers-output.ts";

/** The dampers as they stand, closed, as proposed, and the share at other states. */
export function printDampers(output: DampersOutput, style: Style): string {
  const { ink, columns } = style;
  const share = printQuantity(output.outsideAirShare, "share", style.system);
  const title = ink.strong(`${output.tag} · dampers at ${output.condition}`);
  if (output.dampers.length === 0) return `${title}\nthe unit has no damper`;
  const state = output.solved ? `${share} outside air` : ink.fail("not solved: figures of the last attempt");
  const cautions = [
    "a closed damper before a running fan can pull a cabinet in: the fan waits for an end switch; local codes and licensed practice decide",
  ];
  const parts = [
    `${title}\n${state}`,
    printStates(output, style),
    printClosed(output, style),
    printStopped(output, style),
    printProposal(output, style),
    printShares(output, style),
    ink.quiet(cautions.map((words) => wrapped(words, columns)).join("\n")),
  ];
  return parts.filter((part) => part !== "").join("\n\n");
}

function printStates({ dampers }: DampersOutput, { system, ink }: Style): string {
  const pressure = displayUnit("pressureDifference", system);
  const columns: Column[] = [
    { name: "damper", align: "left" },
    { name: "blades", align: "left" },
    { name: "face", unit: displayUnit("area", system), align: "right" },
    { name: "velocity", unit: displayUnit("velocity", system), align: "right" },
    { name: "from\nclosed", unit: "°", align: "right" },
    { name: "takes", unit: pressure, align: "right" },
    { name: "open would\ntake", unit: pressure, align: "right" },
    { name: "rest of\nits path", unit: pressure, align: "right" },
    { name: "authority", unit: "%", align: "right" },
  ];
  const rows = dampers.map((each) => [
    each.name,
    each.bladeAction,
    printNumber(each.area, "area", system),
    printNumber(each.velocity, "velocity", system),
    each.bladeAngle.toFixed(1),
    ink.strong(printNumber(each.loss, "pressureDifference", system)),
    printNumber(each.openLoss, "pressureDifference", system),
    printNumber(each.restLoss, "pressureDifference", system),
    each.authority === undefined ? "–" : printNumber(each.authority, "share", system),
  ]);
  return printTable(columns, rows, ink);
}

function printClosed({ dampers, stopped }: DampersOutput, { system, ink }: Style): string {
  const columns: Column[] = [
    { name: "when closed", align: "left" },
    { name: "class", align: "right" },
    { name: "sees", unit: displayUnit("pressureDifference", system), align: "right" },
    { name: "leaks", unit: displayUnit("standardAirflow", system), align: "right" },
    { name: "of design", unit: "%", align: "right" },
    { name: "torque", unit: displayUnit("torque", system), align: "right" },
    { name: "because", align: "left" },
  ];
  const closed = stopped.flatMap((each) =>
    each.dampers
      .filter(({ bladeAngle }) => bladeAngle === 0)
      .map((damper) => ({ damper, because: each.name.replace(", dampers closed", "") })),
  );
  const held = dampers.map((damper) => ({ damper, because: damper.closed.because as string }));
  const rows = [...held, ...closed].map(({ damper: { name, leakageClass, closed: shut }, because }) => [
    name,
    leakageClass,
    printNumber(shut.pressure, "pressureDifference", system),
    printNumber(shut.leakage, "standardAirflow", system),
    printNumber(shut.leakageShare, "share", system),
    printNumber(shut.torque, "torque", system),
    because,
  ]);
  return printTable(columns, rows, ink);
}

function printStopped({ stopped }: DampersOutput, { system, ink, columns }: Style): string {
  const lines = stopped.map(({ name, intakeDryAirFlow, dampers }) => {
    const flow = printQuantity(Math.max(0, intakeDryAirFlow) / standardAirDensity, "standardAirflow", system);
    const locked = dampers.some(({ control, bladeAngle }) => control === "hand set" && bladeAngle > 0);
    const why = locked && name.includes("closed") ? "; blades locked by hand do not close" : "";
    return wrapped(`${name}: ${glued(flow)} still come in${why}`, columns);
  });
  return lines.length === 0 ? "" : [ink.quiet("with the fan stopped"), ...lines].join("\n");
}

function printProposal({ proposal }: DampersOutput, style: Style): string {
  if (proposal === undefined) return "";
  const { system, ink, columns } = style;
  const say = (share: number) => glued(printQuantity(share, "share", system));
  const angles = `outside blades ${proposal.outsideBladeAngle.toFixed(1)}°, return blades ${proposal.returnBladeAngle.toFixed(1)}° from closed`;
  const head = ink.quiet(`to hold ${say(proposal.wantedShare)} of outside air`);
  const result = proposal.held
    ? `${angles}; at whole degrees ${say(proposal.shareAtWholeDegrees)}`
    : ink.fail(`no angles do: ${proposal.reason}; nearest ${angles}, ${say(proposal.share)}`);
  return `${head}\n${wrapped(result, columns)}`;
}

function printShares({ shares }: DampersOutput, { system, ink }: Style): string {
  if (shares === undefined) return "";
  const columns: Column[] = [
    { name: "with the blades as they stand", align: "left" },
    { name: "wind", unit: displayUnit("velocity", system), align: "right" },
    { name: "filters", unit: "%", align: "right" },
    { name: "outside air", unit: "%", align: "right" },
    { name: "from the\nreturn", unit: displayUnit("standardAirflow", system), align: "right" },
  ];
  const rows = shares.map((row) => [
    row.words,
    row.windSpeed === 0 ? "–" : printNumber(row.windSpeed, "velocity", system),
    printNumber(row.filterLoading, "share", system),
    row.solved ? ink.strong(printNumber(row.share, "share", system)) : ink.fail("not solved"),
    printNumber(row.returnDryAirFlow / standardAirDensity, "standardAirflow", system),
  ]);
  const words = "the pressure in the return duct stays as the duty has it; negative: air leaves backwards";
  return `${printTable(columns, rows, ink)}\n${ink.quiet(words)}`;
}
