import type { QuantityKind } from "@oncethrough/engine/quantity/kind";
import { displayUnit, printNumber, printQuantity } from "@oncethrough/engine/quantity/print";
import { glued, separator, wrapped } from "../ink.ts";
import { largestFlowHead, largestFlowWords, setSpeedWords } from "../largest-flow-print.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Column, printTable } from "../table.ts";
import type { FanOutput } from "./fan-output.ts";

type Say = (value: number, quantity: QuantityKind) => string;

function sayIn({ system }: Style): Say {
  return (value, quantity) => glued(printQuantity(value, quantity, system));
}

/** How the fan stands between its lowest and its highest speed. */
export function printRange({ range, fan }: FanOutput, style: Style): string {
  const { ink, columns } = style;
  const say = sayIn(style);
  const { nearestPeak, leastSteady, unsteadyBelow, overloadAbove, lowestSpeed, highestSpeed } = range;
  const loading = (share: number) => (share === 0 ? "filters clean" : "filters at change-out");
  const words = [
    fan.speedControlled
      ? `speed ${say(lowestSpeed, "rotationalSpeed")} to ${say(highestSpeed, "rotationalSpeed")}`
      : `speed ${say(highestSpeed, "rotationalSpeed")}`,
  ];
  if (nearestPeak !== undefined) {
    const { pressureToPeak, share, fanSpeed, filterLoading } = nearestPeak;
    words.push(
      `nearest to the peak ${say(pressureToPeak, "share")}, at ${say(share, "share")} of design airflow, ${say(fanSpeed, "rotationalSpeed")}, ${loading(filterLoading)}`,
    );
  }
  if (leastSteady !== undefined)
    words.push(`flow never less than ${say(leastSteady.flowToStable, "share")} of the smallest steady one`);
  if (unsteadyBelow !== undefined) words.push(`unsteady below ${say(unsteadyBelow, "share")} of design airflow`);
  words.push(
    overloadAbove === undefined
      ? "no point of the curve overloads the motor"
      : `above ${say(overloadAbove, "rotationalSpeed")} the curve's highest power overloads the motor`,
  );
  if (range.resonance > 0) words.push(springWords(range, say));
  return `${ink.quiet("over the range of speed and the flows of the duty")}\n${wrapped(words.join(separator), columns)}`;
}

/** The most air that the unit can draw, and what that does at the intake. */
export function printLargestFlows({ largestFlow, largestFlowUnset }: FanOutput, style: Style): string {
  const parts = [
    ...(largestFlow === undefined ? [] : [largestFlowWords(largestFlow, setSpeedWords, style)]),
    ...(largestFlowUnset === undefined
      ? []
      : [largestFlowWords(largestFlowUnset, unsetWords(largestFlowUnset), style)]),
  ];
  if (parts.length === 0) return "";
  return [style.ink.quiet(largestFlowHead), ...parts].join("\n");
}

function unsetWords({ limitedBy }: NonNullable<FanOutput["largestFlowUnset"]>): string {
  return `with that maximum not set, ${limitedBy === "motor" ? "as fast as the motor lets it" : "at its highest speed"}`;
}

function springWords({ resonance, isolatesAbove, lowestSpeed }: FanOutput["range"], say: Say): string {
  const where = lowestSpeed < isolatesAbove ? "; the speed control reaches that: bar these speeds" : "";
  return `springs resonate at ${say(resonance, "rotationalSpeed")} and amplify below ${say(isolatesAbove, "rotationalSpeed")}${where}`;
}

/** What is left of the airflow when one fan fails. */
export function printOneFanOut({ oneFanOut }: FanOutput, style: Style): string {
  const { ink, system } = style;
  const { count, wanted, cases } = oneFanOut;
  const asked = wanted > 0 ? `; the duty wants ${sayIn(style)(wanted, "share")}` : "";
  if (count === 1) {
    const words = `one fan out: it is the only one, no air is moved${asked}`;
    return wanted > 0 ? ink.fail(words) : words;
  }
  if (cases.length === 0) return `one fan out: not solved at this condition${asked}`;
  const columns: Column[] = [
    { name: `one of ${count} fans out`, align: "left" },
    { name: "at the\nsame speed", unit: "%", align: "right" },
    { name: "airflow\nreached", unit: "%", align: "right" },
    { name: "speed", unit: displayUnit("rotationalSpeed", system), align: "right" },
    { name: "of\npeak", unit: "%", align: "right" },
    { name: "mains", unit: displayUnit("electricPower", system), align: "right" },
    { name: "kept from more by", align: "left" },
  ];
  const rows = cases.map((each, index) => {
    const reached = printNumber(each.shareReached, "share", system);
    const name = each.backdraftDampers ? "with backdraft dampers" : "without backdraft dampers";
    return [
      index === 0 ? ink.strong(`${name}, as built`) : name,
      printNumber(each.shareAtSameSpeed, "share", system),
      each.shareReached < wanted - 1e-4 ? ink.fail(`${reached} short`) : reached,
      printNumber(each.fanSpeed, "rotationalSpeed", system),
      printNumber(each.pressureToPeak, "share", system),
      printNumber(each.electricPower, "electricPower", system),
      each.stable === 0 ? ink.fail(`${each.limitedBy}, unsteady`) : each.limitedBy,
    ];
  });
  const words = `shares of design airflow${asked}; a wheel flowed through backwards is taken to lose what it does forwards [from memory]`;
  return `${printTable(columns, rows, ink)}\n${ink.quiet(wrapped(words, style.columns))}`;
}

/** Belts, bearings, starting. */
export function printMechanics({ mechanics }: FanOutput, style: Style): string {
  if (mechanics === undefined) return "";
  const say = sayIn(style);
  const { belts, bearings, startingTime, startedBy, certainty, source } = mechanics;
  const start = startedBy === "line" ? "to speed on the line in about" : "ramp of the speed control at least";
  const words = [`${start} ${say(startingTime, "time")}`];
  if (belts !== undefined) {
    words.push(
      `${belts.count} B belts on ${say(belts.motorSheave, "length")} and ${say(belts.fanSheave, "length")} sheaves, ${say(belts.centreDistance, "length")} apart`,
      `rim ${say(belts.beltSpeed, "velocity")}`,
      `belts last ${belts.lastsLonger ? "more than" : "about"} ${hours(belts.life)}`,
    );
    if (belts.count > 6) words.push("so many belts ask for a larger section");
  }
  if (bearings !== undefined) {
    words.push(`bearing beside the sheave carries ${say(bearings.load, "force")}`);
    words.push(
      bearings.life === undefined
        ? `${hours(bearings.lifeWanted)} (L10) ask a load rating of ${say(bearings.ratingWanted, "force")}`
        : `it lasts ${hours(bearings.life)} (L10)${bearings.life < bearings.lifeWanted ? `, short of ${hours(bearings.lifeWanted)}` : ""}`,
    );
  } else words.push("the motor's own bearings carry the wheel: their life is the motor maker's to say");
  return `${wrapped(words.join(separator), style.columns)}\n${style.ink.quiet(wrapped(`${certainty} [${source}]`, style.columns))}`;
}

function hours(seconds: number): string {
  const count = Number((seconds / 3600).toPrecision(2));
  return glued(`${String(count).replace(/\B(?=(\d{3})+$)/g, ",")} h`);
}

/** Currents, wires and protection. */
export function printElectrical({ electrical, fan }: FanOutput, style: Style): string {
  const amperes = (value: number) => glued(`${value.toFixed(1)} A`);
  const say = sayIn(style);
  const share = sayIn(style)(electrical.allowedShare, "share");
  const words = [
    `motor ${amperes(electrical.fullLoadCurrent)} at ${glued(`${electrical.voltage.toFixed(0)} V`)}, ${fan.count} of them`,
    `circuit ampacity at least ${amperes(electrical.minimumCircuitAmpacity)}`,
    `overcurrent protection at most ${glued(`${electrical.maximumOvercurrentProtection.toFixed(0)} A`)}`,
    `overload trip at most ${amperes(electrical.overloadTrip)} each`,
    `service factor that counts ${electrical.serviceFactor.toFixed(2)}`,
    `each may give ${say(electrical.allowedPower, "shaftPower")} at this altitude and supply, ${share} of its plate`,
  ];
  const caution = `${electrical.caution} [${electrical.source}]`;
  return `${wrapped(words.join(separator), style.columns)}\n${style.ink.quiet(wrapped(caution, style.columns))}`;
}

/** The fans against the energy standard's limit. */
export function printPowerLimit({ powerLimit }: FanOutput, style: Style): string {
  const say = sayIn(style);
  const { shaftPower, shaftLimit, nameplate, nameplateLimit, credits, variable } = powerLimit;
  const shafts = `shafts take ${say(shaftPower, "shaftPower")} of ${say(shaftLimit, "shaftPower")} allowed`;
  const plates = `plates ${say(nameplate, "shaftPower")} of ${say(nameplateLimit, "shaftPower")}: one of both has to hold`;
  const words = [
    `fan power limit, ${variable ? "variable" : "constant"} flow of ${say(powerLimit.flow, "standardAirflow")}`,
    shaftPower > shaftLimit && nameplate > nameplateLimit ? style.ink.fail(`${shafts}, over the limit`) : shafts,
    plates,
  ];
  const taken = credits.map((each) => `${each.name} ${say(each.power, "shaftPower")}`).join(", ");
  const quiet = `credits taken: ${taken}; exhaust fans that run with this unit count against the same limit; ${powerLimit.certainty} [${powerLimit.source}]`;
  return `${wrapped(words.join(separator), style.columns)}\n${style.ink.quiet(wrapped(quiet, style.columns))}`;
}

/** The same fans against allowances of electric power by component, the newer form. */
export function printPowerAllowances({ powerAllowances }: FanOutput, style: Style): string {
  if (powerAllowances.length === 0) return "";
  const say = sayIn(style);
  const power = (value: number) => say(value, "electricPower");
  const blocks = powerAllowances.map((each) => {
    const { taken, allowed, allowedAtMost, drawnClean, drawnDirty, outcome, missing } = each;
    const upTo = allowedAtMost > allowed ? `, at most ${power(allowedAtMost)}` : "";
    const verdict = outcome === "cannot tell" ? `cannot tell without ${missing}` : outcome;
    const words = `${each.edition}: ${power(allowed)} allowed${upTo} · drawn ${power(drawnClean)} clean, ${power(drawnDirty)} at change-out: ${verdict}`;
    const rows = taken.map((row) => {
      const only = row.onlyIf === undefined ? "" : ` if ${row.onlyIf}`;
      return `${row.name} ${power(row.power)}${only}`;
    });
    const quiet = `${rows.join(", ")}; ${each.certainty} [${each.source}]`;
    const told = outcome === "exceeded" ? style.ink.fail(words) : words;
    return `${wrapped(told, style.columns)}\n${style.ink.quiet(wrapped(quiet, style.columns))}`;
  });
  const head = "fan power by component, this unit's fans alone, filters clean to change-out";
  return [style.ink.quiet(head), ...blocks].join("\n");
}
