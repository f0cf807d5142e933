import { beltEfficiencyFromPower } from "#component/belt-drive";
import { fanPeakPower, flowCoefficientFromResistance } from "#component/fan-performance";
import { weightedLevel } from "#component/fan-sound";
import type { FanWheel } from "#component/fan-wheel";
import { standardMotorPower } from "#component/motor";
import { metresPerInch } from "#quantity/inch-pound";
import type { Air } from "#section/air";
import type { Frame, SectionCondition } from "#section/contract";
import { SectionProblem } from "#section/contract";
import { type FanDesign, fanWidth, housingsWidth, prepareFan, wheelCell } from "#section/fan/design";
import type { FanValues } from "#section/fan/fields";
import { fan } from "#section/fan/kind";
import { createFanRating, type FanSectionRating } from "#section/fan/rate";
import { fanSpeedForPressure } from "#section/fan/rise";
import { fanMadeSound } from "#section/fan/sound";
import { rateSection } from "#section/rate-section";
import { actualAirflow, airDensity } from "#section/station";
import { standardFanDiameters } from "#standard/fan-diameter";

/** What fans are wanted for: the air before them, the total pressure to add, the cabinet, and what may be built. */
export interface FanTask {
  readonly frame: Frame;
  readonly air: Air;
  readonly at: SectionCondition;
  /** Pa of total pressure that the section has to add. */
  readonly rise: number;
  /** What the job says of its fans; wheel, diameter, class, count, drive and motor power are varied. */
  readonly values: FanValues;
  readonly wheels: readonly FanWheel[];
  readonly counts: readonly number[];
  /** Of what the curve's peak asks, that a motor must give; 1 when left out. */
  readonly motorReserve?: number;
  /** m; the standard ones when left out. */
  readonly diameters?: readonly number[];
  readonly drives: readonly ("belt" | "direct")[];
  /** Largest share of the peak static pressure; owners ask 0.9. */
  readonly pressureToPeak: number;
}

/** One way to build the fans, with what it comes to. */
export interface FanCandidate {
  readonly wheel: FanWheel;
  readonly diameter: number;
  readonly class: string;
  readonly count: number;
  readonly drive: "belt" | "direct";
  /** rev/s. */
  readonly speed: number;
  /** W of one motor: the smallest standard size that nothing on the curve at this speed overloads. */
  readonly motorPower: number;
  readonly electricPower: number;
  readonly staticEfficiency: number;
  readonly totalEfficiency: number;
  readonly pressureToPeak: number;
  readonly flowToStable: number;
  readonly energyIndex: number;
  /** dB(A) of sound power at the outlet. */
  readonly sound: number;
  /** m across the cabinet with the room that the fans need, and along the airflow. */
  readonly width: number;
  readonly length: number;
}

const standardDiameters = standardFanDiameters.inches.map((inches) => inches * metresPerInch);

/** How many candidates were looked at, and those that hold, least electric power first. */
export interface FanSelection {
  readonly looked: number;
  readonly candidates: readonly FanCandidate[];
}

/**
 * Looks at every wheel line, standard diameter, count and drive of the task and keeps those that fit the cabinet, run
 * steadily, stay under the share of peak pressure, within a class's tip speed and within standard motors.
 */
export function selectFans(task: FanTask): FanSelection {
  const rating = createFanRating();
  const flow = actualAirflow(task.air);
  const density = airDensity(task.air);
  const candidates: FanCandidate[] = [];
  let looked = 0;
  for (const wheel of task.wheels) {
    for (const diameter of task.diameters ?? standardDiameters) {
      for (const count of task.counts) {
        for (const drive of task.drives) {
          looked++;
          if ((drive === "direct" && wheel.inlets === 2) || !mayFit(wheel, diameter, count, task.frame)) continue;
          const guess = guessSpeed(task, wheel, diameter, flow / count, density);
          if (guess === undefined) continue;
          const found = tryFan(task, { wheel, diameter, count, drive }, flow, density, guess, rating);
          if (found !== undefined) candidates.push(found);
        }
      }
    }
  }
  candidates.sort((a, b) => a.electricPower - b.electricPower);
  return { looked, candidates };
}

interface Choice {
  readonly wheel: FanWheel;
  readonly diameter: number;
  readonly count: number;
  readonly drive: "belt" | "direct";
}

/** Quick look at size, before anything is prepared: what this refuses would not be built either. */
function mayFit(wheel: FanWheel, diameter: number, count: number, frame: Frame): boolean {
  if (diameter < wheel.smallestDiameter || diameter > wheel.largestDiameter) return false;
  if (wheel.arrangement === "plenum wheel") {
    const cell = wheelCell * diameter;
    const [across, high] = [Math.floor(frame.width / cell), Math.floor(frame.height / cell)];
    for (let rows = 1; rows <= high; rows++) if (count % rows === 0 && count / rows <= across) return true;
    return false;
  }
  return housingsWidth(wheel, diameter, count) <= frame.width && 1.6 * diameter <= frame.height;
}

/**
 * Speed (rev/s) without the losses of how the fan stands, a little low; undefined when already so the fan is too near its
 * peak, unsteady or too fast: the losses only raise speed and resistance.
 */
function guessSpeed(
  task: FanTask,
  wheel: FanWheel,
  diameter: number,
  flow: number,
  density: number,
): number | undefined {
  const { curve } = wheel;
  const outletArea = wheel.outletWidth * wheel.outletHeight * diameter ** 2;
  const regain = outletArea > 0 ? 0.5 * density * (flow / outletArea) ** 2 : 0;
  const velocity = flow / (0.25 * Math.PI * diameter ** 2);
  const resistance = (2 * (task.rise - regain)) / (density * velocity ** 2);
  if (resistance <= 0) return velocity / (curve.freeFlow * Math.PI * diameter);
  const coefficient = flowCoefficientFromResistance(curve, resistance);
  const tip = velocity / coefficient;
  const holds =
    coefficient >= curve.stableFlow &&
    resistance * coefficient ** 2 <= task.pressureToPeak * curve.peakPressure &&
    tip <= wheel.classes[wheel.classes.length - 1]!.tipSpeed;
  return holds ? tip / (Math.PI * diameter) : undefined;
}

function tryFan(
  task: FanTask,
  choice: Choice,
  flow: number,
  density: number,
  guess: number,
  rating: FanSectionRating,
): FanCandidate | undefined {
  // Class and motor follow from the speed, the speed from the built fan: built with a guess, and again where it was wrong.
  const first = sizesAt(task, choice, guess, density);
  const trial = first === undefined ? undefined : prepared(task, { ...choice, ...first });
  if (first === undefined || trial === undefined) return undefined;
  const speed = fanSpeedForPressure(trial, flow, task.rise, density);
  const sizes = speed === 0 ? undefined : sizesAt(task, choice, speed, density);
  if (sizes === undefined || (choice.drive === "direct" && !isReachable(trial, speed))) return undefined;
  const isSame = sizes.class === first.class && sizes.motorPower === first.motorPower;
  const design = isSame ? trial : prepared(task, { ...choice, ...sizes });
  if (design === undefined) return undefined;
  const { operation, condition } = task.at;
  const at = { condition, operation: { ...operation, fansRunning: true, fanSpeed: speed } };
  rateSection(fan, design, task.air, at, rating);
  if (rating.stable === 0 || rating.pressureToPeak > task.pressureToPeak) return undefined;
  const sound = fanMadeSound(design, rating);
  return {
    ...choice,
    ...sizes,
    speed,
    electricPower: rating.electricPower,
    staticEfficiency: rating.staticEfficiency,
    totalEfficiency: rating.totalEfficiency,
    pressureToPeak: rating.pressureToPeak,
    flowToStable: rating.flowToStable,
    energyIndex: rating.energyIndex,
    sound: sound === undefined ? Number.NEGATIVE_INFINITY : weightedLevel(sound.downstream),
    width: fanWidth(design),
    length: design.length,
  };
}

/** The lightest class and the smallest standard motor for a speed; undefined when there is none. */
function sizesAt(
  task: FanTask,
  choice: Choice,
  speed: number,
  density: number,
): { readonly class: string; readonly motorPower: number } | undefined {
  const { wheel, diameter, drive } = choice;
  const kept = wheel.classes.find((each) => each.tipSpeed >= Math.PI * diameter * speed);
  const peak = fanPeakPower(wheel.curve, diameter, speed, density);
  const passed = drive === "belt" ? beltEfficiencyFromPower(task.values.belts.band, peak) : 1;
  const motorPower = standardMotorPower(((task.motorReserve ?? 1) * peak) / passed);
  return kept === undefined || motorPower === undefined ? undefined : { class: kept.name, motorPower };
}

function prepared(
  task: FanTask,
  choice: Choice & { readonly class: string; readonly motorPower: number },
): FanDesign | undefined {
  try {
    return prepareFan({ ...task.values, fixedSpeed: undefined, rows: undefined, ...choice }, task.frame);
  } catch (problem) {
    if (problem instanceof SectionProblem) return undefined;
    throw problem;
  }
}

/** A direct motor is led between its speed control's ends; without one it turns at its own speed alone. */
function isReachable(design: FanDesign, speed: number): boolean {
  if (!design.speedControlled) return Math.abs(speed / design.motorSpeed - 1) < 0.01;
  const { lowestSpeed, highestSpeed } = design.speedControl;
  return speed >= lowestSpeed * design.motorSpeed && speed <= highestSpeed * design.motorSpeed;
}
