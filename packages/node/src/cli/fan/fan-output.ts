import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { weightedLevel } from "@oncethrough/engine/component/fan-sound";
import { type FanOut, oneFanOut } from "@oncethrough/engine/design/fan-out";
import {
  type FanAllowanceVerdict,
  fanAllowanceVerdicts,
  fanDraw,
} from "@oncethrough/engine/design/fan-power-allowance";
import { type FanRange, fanRange } from "@oncethrough/engine/design/fan-range";
import { type FanCandidate, selectFans } from "@oncethrough/engine/design/fan-selection";
import { fanSectionTask } from "@oncethrough/engine/design/section-task";
import type { Job } from "@oncethrough/engine/job/job";
import { type FanPowerVerdict, fanPowerVerdict } from "@oncethrough/engine/rule/energy/fan-power-limit";
import type { DeclaredComparison } from "@oncethrough/engine/section/declared";
import { compareDeclared } from "@oncethrough/engine/section/fan/declared";
import type { FanDesign } from "@oncethrough/engine/section/fan/design";
import { type FanElectrical, fanElectrical } from "@oncethrough/engine/section/fan/electrical";
import { type FanMechanics, fanMechanics } from "@oncethrough/engine/section/fan/mechanics";
import type { FanSectionRating } from "@oncethrough/engine/section/fan/rate";
import { fanMadeSound } from "@oncethrough/engine/section/fan/sound";
import { atLargestFlow, type LargestFlow, largestFlowOf, rateUnsetSpeed } from "@oncethrough/engine/unit/largest-flow";
import { createUnitRating, rateUnit } from "@oncethrough/engine/unit/rate-unit";
import type { UnitRating } from "@oncethrough/engine/unit/rating";
import { type EvaluatedWorking, workingOf } from "@oncethrough/engine/unit/report";

/** What `oncethrough fan --json` prints; the tables for people are printed from the same figures. All in SI. */
export interface FanOutput {
  readonly format: "oncethrough fan 1";
  readonly tag: string;
  readonly section: string;
  readonly fan: FanBuilt;
  readonly points: readonly FanPoint[];
  /** Key of the condition of what follows. */
  readonly condition: string;
  /** Sound power at the point; left out when the fan stands. */
  readonly sound?: SoundOutput;
  readonly electrical: FanElectrical;
  /** What turns and how long it lasts; left out when the fan stands. */
  readonly mechanics?: FanMechanics;
  readonly range: FanRange;
  /** With filters clean and the fan as fast as any condition asks; left out where it finds no balance. */
  readonly largestFlow?: LargestFlow;
  /** The same with a speed control whose maximum nobody has set, where class, control and motor let it turn faster. */
  readonly largestFlowUnset?: LargestFlow & { readonly limitedBy: "speed" | "motor" };
  readonly oneFanOut: OneFanOutOutput;
  readonly powerLimit: FanPowerVerdict;
  /** One for each edition; none where the unit finds no balance with filters clean and at change-out. */
  readonly powerAllowances: readonly FanAllowanceVerdict[];
  /** The seller's rating beside ours, where the job declares one. */
  readonly declared?: DeclaredComparison;
  readonly alternatives?: { readonly looked: number; readonly candidates: readonly CandidateOutput[] };
  readonly working?: readonly EvaluatedWorking[];
}

/** The fan as it is built. */
export interface FanBuilt {
  readonly wheel: string;
  readonly arrangement: string;
  readonly diameter: number;
  readonly class: string;
  readonly count: number;
  readonly drive: "belt" | "direct";
  readonly motorPower: number;
  readonly speedControlled: boolean;
  readonly tipSpeedLimit: number;
  readonly mass: number;
}

/** The fan at one condition. */
export interface FanPoint {
  readonly condition: string;
  readonly solved: boolean;
  readonly figures: Readonly<Record<string, number>>;
}

/** Octave bands 63 … 8000 Hz of all fans together. */
export interface SoundOutput {
  readonly inlet: readonly number[];
  readonly outlet: readonly number[];
  readonly weighted: number;
  readonly bladePass: number;
  readonly uncertainty: number;
  readonly certainty: string;
  readonly source: string;
}

/** The array with one fan out, and the share of design airflow that the duty wants of it. */
export interface OneFanOutOutput extends FanOut {
  readonly wanted: number;
}

/** Another way to build the fans. */
export type CandidateOutput = Omit<FanCandidate, "wheel"> & { readonly wheel: string };

/** What the command was asked for. */
export interface FanRequest {
  /** Key of the condition in full; undefined: the first of wet-bulb day at change-out and the job's own first. */
  readonly condition: string | undefined;
  readonly working: boolean;
  /** The records to choose among; undefined when no alternatives are wanted. */
  readonly catalogue: Catalogue | undefined;
}

/** Index of the unit's fan section; every unit has one. */
export function fanSectionIndex(job: Job): number {
  return job.unit.sections.findIndex((section) => section.behaviour.role === "fan");
}

/** Rates the fan of a job at every condition, and tells all of it at one. */
export function fanOf(job: Job, request: FanRequest): FanOutput {
  const index = fanSectionIndex(job);
  const section = job.unit.sections[index];
  const chosen =
    job.conditions.find((condition) => condition.key === (request.condition ?? "wet-bulb-day-1")) ?? job.conditions[0];
  if (section === undefined || chosen === undefined) throw new Error("a job without fan or conditions");
  const design = section.design as FanDesign;
  const rating = createUnitRating(job.unit, chosen);
  const met = { speed: 0, density: 0 };
  const points = job.conditions.map((condition): FanPoint => {
    rateUnit(job.unit, condition, rating);
    const { fanSpeed, density } = rating.sections[index] as FanSectionRating;
    if (rating.solved && fanSpeed > met.speed) met.speed = fanSpeed;
    if (rating.solved && fanSpeed > 0 && density > met.density) met.density = density;
    return { condition: condition.key, solved: rating.solved, figures: figuresAt(job, rating, index) };
  });
  rateUnit(job.unit, chosen, rating);
  const record = rating.sections[index] as FanSectionRating;
  const lines = request.working ? workingOf(job.unit, rating, section.name) : undefined;
  const sound = soundOutput(design, record);
  const mechanics = fanMechanics(design, record, met.speed);
  const declared = compareDeclared(design, record);
  const { supplyAirflow, redundancy, utilities } = job.duty;
  const leastShare = (supplyAirflow.minimum ?? supplyAirflow.design) / supplyAirflow.design;
  const range = fanRange(job.unit, chosen, { ...met, leastShare });
  const variable = design.speedControlled && leastShare < 1;
  const draw = fanDraw(job.unit, chosen);
  const most = rateUnit(job.unit, atLargestFlow(chosen, met.speed), createUnitRating(job.unit, chosen));
  const unset = design.speedControlled ? rateUnsetSpeed(job.unit, chosen, range.highestSpeed) : undefined;
  return {
    format: "oncethrough fan 1",
    tag: job.tag,
    section: section.name,
    fan: builtOf(design),
    points,
    condition: chosen.key,
    ...(sound === undefined ? {} : { sound }),
    electrical: fanElectrical(design, record, utilities.electricity.voltage),
    ...(mechanics === undefined ? {} : { mechanics }),
    range,
    ...(most.solved && met.speed > 0 ? { largestFlow: largestFlowOf(job.unit, most) } : {}),
    ...(unset === undefined || isNear(unset.operation.fanSpeed, met.speed)
      ? {}
      : { largestFlowUnset: unsetOf(job, unset, range.highestSpeed) }),
    oneFanOut: { wanted: redundancy.airflowWithOneFanOut, ...oneFanOut(job.unit, chosen) },
    powerLimit: fanPowerVerdict(job.unit, rating, variable),
    powerAllowances: draw === undefined ? [] : fanAllowanceVerdicts(job.unit, draw, variable),
    ...(declared === undefined ? {} : { declared }),
    ...(request.catalogue === undefined ? {} : { alternatives: alternativesOf(job, rating, request.catalogue) }),
    ...(lines === undefined ? {} : { working: lines }),
  };
}

/** True where two speeds are one to a reader. */
function isNear(one: number, other: number): boolean {
  return Math.abs(one - other) < 1e-3 * other;
}

function unsetOf(job: Job, rating: UnitRating, highest: number): NonNullable<FanOutput["largestFlowUnset"]> {
  const most = largestFlowOf(job.unit, rating);
  return { ...most, limitedBy: most.fanSpeed < highest * (1 - 1e-5) ? "motor" : "speed" };
}

function figuresAt(job: Job, rating: UnitRating, index: number): Record<string, number> {
  const values = rating.sections[index] as unknown as Readonly<Record<string, unknown>>;
  const lines = job.unit.sections[index]?.behaviour.figures ?? [];
  return Object.fromEntries(
    lines.flatMap(({ figure }) => {
      const value = values[figure];
      return typeof value === "number" ? [[figure, value] as const] : [];
    }),
  );
}

function builtOf(design: FanDesign): FanBuilt {
  return {
    wheel: design.wheel.head.name,
    arrangement: design.wheel.arrangement,
    diameter: design.diameter,
    class: design.class,
    count: design.count,
    drive: design.drive,
    motorPower: design.motorPower,
    speedControlled: design.speedControlled,
    tipSpeedLimit: design.tipSpeedLimit,
    mass: design.fanMass,
  };
}

function soundOutput(design: FanDesign, record: FanSectionRating): SoundOutput | undefined {
  const made = fanMadeSound(design, record);
  if (made === undefined) return undefined;
  const { upstream: inlet, downstream: outlet, tone: bladePass = 0, uncertainty, source, certainty } = made;
  return { inlet, outlet, weighted: weightedLevel(outlet), bladePass, uncertainty, source, certainty };
}

/** So many alternatives are told. */
const mostAlternatives = 12;

function alternativesOf(job: Job, rating: UnitRating, catalogue: Catalogue): NonNullable<FanOutput["alternatives"]> {
  const limits = { pressureToPeak: 0.9, fewestFans: 1, mostFans: 16, drive: "either" } as const;
  const none = { sound: undefined, length: undefined };
  const task = fanSectionTask(job.unit, fanSectionIndex(job), rating, { ...limits, ...none }, catalogue);
  const { looked, candidates } = task === undefined ? { looked: 0, candidates: [] } : selectFans(task);
  const shown = candidates.slice(0, mostAlternatives);
  return { looked, candidates: shown.map(({ wheel, ...rest }) => ({ ...rest, wheel: wheel.head.name })) };
}
