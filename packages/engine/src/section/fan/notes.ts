import { leastSpringDeflection } from "#component/spring";
import { metresPerInch } from "#quantity/inch-pound";
import { standardFanDiameters } from "#standard/fan-diameter";
import { inBothUnits } from "../both-units.ts";
import type { Note, SectionCondition, Shortfall } from "../contract.ts";
import type { FanDesign } from "./design.ts";
import type { FanSectionRating } from "./rate.ts";
import { speedRange } from "./speed-range.ts";

/** What the fans cannot hold: motor, tip speed, range of the speed control. */
export function fanShortfalls(design: FanDesign, rating: FanSectionRating): readonly Shortfall[] {
  if (rating.fanSpeed === 0) return [];
  const found: Shortfall[] = [];
  if (rating.motorOutput > rating.motorAllowed * (1 + 1e-9)) {
    found.push({
      what: "the motor is too small at this point",
      quantity: "shaftPower",
      wanted: rating.motorOutput,
      got: rating.motorAllowed,
    });
  }
  if (rating.tipSpeed > design.tipSpeedLimit * (1 + 1e-9)) {
    found.push({
      what: "the wheel would turn faster than its class allows",
      quantity: "velocity",
      wanted: rating.tipSpeed,
      got: design.tipSpeedLimit,
    });
  }
  const range = speedRange(design);
  if (range !== undefined && rating.fanSpeed > range.highest * (1 + 1e-9)) {
    found.push({
      what: "the speed control does not reach this speed",
      quantity: "rotationalSpeed",
      wanted: rating.fanSpeed,
      got: range.highest,
    });
  }
  return found;
}

/** What to mind about a rating. */
export function fanNotes(design: FanDesign, rating: FanSectionRating, at: SectionCondition): readonly Note[] {
  const running = rating.fanSpeed > 0 ? runningNotes(design, rating) : stoppedNotes(design, at);
  return [...running, ...builtNotes(design)];
}

function runningNotes(design: FanDesign, rating: FanSectionRating): readonly Note[] {
  const { curve } = design.wheel;
  const found: Note[] = [];
  if (rating.backflow > 0) {
    found.push({
      what: "air flows back through the failed fans, which have no backdraft dampers; the loss of a wheel flowed through backwards is taken as that forwards",
      weight: "caution",
      source: "from-memory",
    });
  }
  if (design.backdraftDampers && rating.fansRunning < design.count) {
    found.push({
      what: "the closed backdraft damper of a failed fan is taken as tight",
      weight: "information",
      source: "common-practice",
    });
  }
  if (rating.stable === 0) {
    found.push({
      what: "left of the smallest steady flow: the fan may surge (limit of the record)",
      weight: "caution",
    });
  }
  if (rating.flowCoefficient > curve.largestFlow) {
    found.push({
      what: "more flow than the last point of the fan's curve; pressure and power are extended",
      weight: "caution",
    });
  }
  if (rating.flowCoefficient < curve.smallestFlow) {
    found.push({
      what: "less flow than the first point of the fan's curve; its pressure is held",
      weight: "caution",
    });
  }
  if (rating.peakShaftPower / rating.driveEfficiency > rating.motorAllowed) {
    found.push({
      what: "somewhere on the curve at this speed the fan asks more than the motor may give",
      weight: "caution",
    });
  }
  const range = speedRange(design);
  if (range !== undefined && rating.fanSpeed < range.lowest) {
    found.push({ what: "slower than the speed control's lowest good speed", weight: "caution" });
  }
  return [...found, ...springNotes(design, rating)];
}

function springNotes(design: FanDesign, rating: FanSectionRating): readonly Note[] {
  const found: Note[] = [];
  if (design.naturalFrequency > 0 && rating.frequencyRatio < Math.SQRT2) {
    found.push({
      what: "at this speed the springs pass on more force than the fan makes (less than √2 times their natural frequency)",
      weight: "caution",
      source: "den-hartog-mechanical-vibrations",
    });
  }
  const least = leastSpringDeflection(rating.fanSpeed, design.floor, design.motorPower);
  if (design.isolation === "springs" && design.springs.deflection < least - 1e-6) {
    found.push({
      what: `springs of ${inBothUnits(design.springs.deflection, "length")} stand where the handbook's table, from memory, asks ${inBothUnits(least, "length")} at this speed and floor`,
      weight: "information",
      source: "ashrae-applications-noise-vibration",
    });
  }
  if (design.isolation === "springs" && rating.staticPressure > 996) {
    found.push({
      what: "above 4 in.wg (996 Pa) the fan's thrust calls for a thrust restraint or an inertia base",
      weight: "information",
      source: "common-practice",
    });
  }
  return found;
}

function stoppedNotes(design: FanDesign, at: SectionCondition): readonly Note[] {
  if (design.backdraftDampers || at.condition.flow.mode !== "fan stopped") return [];
  return [
    {
      what: "the standing wheel is let through freely; what it really takes depends on whether it is held or turns along",
      weight: "information",
      source: "from-memory",
    },
  ];
}

/** What holds at every condition. */
function builtNotes(design: FanDesign): readonly Note[] {
  const found: Note[] = [];
  const inches = design.diameter / metresPerInch;
  if (!standardFanDiameters.inches.some((each) => Math.abs(each - inches) < 0.02)) {
    found.push({
      what: "the wheel is not of the standard diameters; it would be made to order",
      weight: "information",
      source: "amca-99",
    });
  }
  if (design.inletLoss > 0) {
    found.push({
      what: `inlets stand ${(design.clearance / design.diameter).toFixed(2)} wheel diameters from the next wall; the loss shown is from memory`,
      weight: "information",
      source: "amca-201",
    });
  }
  found.push({
    what: "rotating wheel, shaft and belts: guards, a disconnect that can be locked, lock-out before anyone enters; local codes and licensed practice decide",
    weight: "information",
    source: "common-practice",
  });
  return found;
}
