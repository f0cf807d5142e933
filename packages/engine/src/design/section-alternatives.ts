import { circuitChoices } from "#component/coil/coil";
import type { FinnedSurface } from "#component/finned-surface/family";
import type { Air } from "#section/air";
import { type CoilBlock, casingFlange } from "#section/coil/block";
import { type Frame, type SectionCondition, SectionProblem } from "#section/contract";
import { rateSection } from "#section/rate-section";
import type { RecoveryCoilDesign } from "#section/recovery-coil/design";
import { recoveryCoil } from "#section/recovery-coil/kind";
import { actualAirflow } from "#section/station";
import { steamCoil } from "#section/steam-coil/kind";
import { steamCoilFaceBypass } from "#section/steam-coil-face-bypass/kind";
import type { RatedCoilKind } from "./choosable.ts";
import type { CoilLimits, CoilRefusal, CoilSorting } from "./coil-alternative.ts";
import { coilRefusals } from "./coil-alternative.ts";
import { loopTubeVelocity, type RecoveryAlternative, recoveryFigures } from "./recovery-alternative.ts";
import { type SteamAlternative, steamFigures } from "./steam-alternative.ts";

/** Values of a section as a job or a coil file has them. */
export type RatedCoilValues = Readonly<Record<string, unknown>> & {
  readonly kind: RatedCoilKind;
  readonly surface: FinnedSurface;
  readonly rows: number;
  readonly fins: number;
};

/** What a coil on steam or of a run-around loop is chosen for, and what may be built. */
export interface SectionCoilTask {
  readonly values: RatedCoilValues;
  readonly frame: Frame;
  /** The air before the coil; asked for once its face is known. */
  readonly air: (present: CoilBlock) => Air;
  /**
   * The condition at a leaving dry bulb, or with the valve open and no liquid led round where none is given, and at kg/s of
   * the section's own dry air.
   */
  readonly at: (leaving: number | undefined, dryAirFlow: number) => SectionCondition;
  /** °C behind the coil with the valve open; what the present coil reaches when left out. */
  readonly wanted: number | undefined;
  readonly surfaces: readonly FinnedSurface[];
  readonly rows: readonly number[];
  /** 1/m. */
  readonly fins: readonly number[];
  readonly limits: CoilLimits;
}

/** A way to build a coil on steam or of a loop. */
export type SectionCoilAlternative = SteamAlternative | RecoveryAlternative;

/** What the search came to, as for coils on water. */
export interface SectionCoilChoice {
  readonly looked: number;
  readonly refused: Readonly<Record<CoilRefusal, number>>;
  readonly wanted: number;
  readonly present: SectionCoilAlternative | undefined;
  readonly candidates: readonly SectionCoilAlternative[];
}

/** Figures of a solved section, or what stands against it. `wanted` undefined asks nothing but that it can be built. */
export type Examined = SectionCoilAlternative | CoilRefusal;

interface Way {
  readonly surface: FinnedSurface;
  readonly rows: number;
  readonly fins: number;
  readonly circuits: number | undefined;
  readonly turbulators: "none" | "wire" | undefined;
  /** What is known of the way before it is built. */
  readonly outline: Outline | undefined;
}

/** A coil's face and one tube of it, alike for all ways with one surface. */
interface Outline {
  /** m², of all coils. */
  readonly faceArea: number;
  /** m of fins along the flow for each row. */
  readonly rowDepth: number;
  /** m/s in the tubes of one circuit; of coils on steam undefined. */
  readonly circuitVelocity: number | undefined;
}

/** K by which the leaving air may miss. */
const leavingTolerance = 0.01;

/**
 * Looks at every combination of surface, rows and fins, for a loop also of circuits and turbulators, rates the section with
 * each, and keeps those that meet the leaving air within the limits. A loop keeps its flow, and its exhaust coil follows the
 * section's where the job does not give it its own.
 *
 * @throws SectionProblem when the coil itself cannot be built
 */
export function sectionCoilAlternatives(asked: SectionCoilTask, sorting: CoilSorting = "price"): SectionCoilChoice {
  const search = sectionCoilSearch(asked, sorting);
  for (let step = search.next(); ; step = search.next()) if (step.done) return step.value;
}

/** The same search by steps: yields how many ways were looked at, wherever it may be stopped. */
export function* sectionCoilSearch(
  asked: SectionCoilTask,
  sorting: CoilSorting = "price",
): Generator<number, SectionCoilChoice> {
  const task = { ...asked, values: withFlow(asked) };
  const examine = examinerOf(task);
  const present = examine(presentWay(task.values), undefined);
  const reached = typeof present === "string" ? undefined : present.leavingDryBulb;
  const wanted = task.wanted ?? reached ?? 0;
  const refused = Object.fromEntries(coilRefusals.map((each) => [each, 0])) as Record<CoilRefusal, number>;
  const candidates: SectionCoilAlternative[] = [];
  let looked = 0;
  for (const way of waysOf(task)) {
    looked++;
    const found = examine(way, wanted);
    if (typeof found === "string") refused[found]++;
    else candidates.push(found);
    yield looked;
  }
  sortSectionCoils(candidates, sorting);
  return { looked, refused, wanted, present: typeof present === "string" ? undefined : present, candidates };
}

/** Sorts in place, least first; what is alike by price. */
function sortSectionCoils(candidates: SectionCoilAlternative[], sorting: CoilSorting): void {
  const keys: Readonly<Record<CoilSorting, (each: SectionCoilAlternative) => number>> = {
    price: (each) => each.priceIndex,
    air: (each) => each.airPressureDrop,
    water: (each) => ("loopPressureDrop" in each ? each.loopPressureDrop : 0),
    rows: (each) => each.rows,
  };
  const key = keys[sorting];
  candidates.sort((a, b) => key(a) - key(b) || a.priceIndex - b.priceIndex || a.airPressureDrop - b.airPressureDrop);
}

function presentWay(values: RatedCoilValues): Way {
  return {
    surface: values.surface,
    rows: values.rows,
    fins: values.fins,
    circuits: values.circuits as number | undefined,
    turbulators: values.turbulators as Way["turbulators"],
    outline: undefined,
  };
}

function* waysOf({ values, surfaces, rows, fins, frame }: SectionCoilTask): Generator<Way> {
  const loops = values.kind === recoveryCoil.name;
  for (const surface of surfaces) {
    const sample = sampleOf(values, surface, frame);
    if (sample === undefined && loops) continue;
    const outline = sample && outlineOf(sample);
    const tubesPerRow = sample?.block.coil.tubesPerRow ?? 1;
    for (const row of rows) {
      for (const circuits of loops ? circuitChoices(row, tubesPerRow) : [undefined]) {
        for (const turbulators of loops ? (["none", "wire"] as const) : [undefined]) {
          for (const fin of fins) yield { surface, rows: row, fins: fin, circuits, turbulators, outline };
        }
      }
    }
  }
}

/** The coil as it is with a surface, at the loop's flow; undefined where the cabinet does not take it. */
function sampleOf(values: RatedCoilValues, surface: FinnedSurface, frame: Frame): WithBlock | undefined {
  const free = values.kind === recoveryCoil.name ? { ...values, connectionEnds: "as the circuits give" } : values;
  const made = prepared(free, { ...presentWay(values), surface, circuits: undefined }, frame);
  return made === "not built" ? undefined : made;
}

function outlineOf(sample: WithBlock): Outline {
  const { block } = sample;
  const isLoop = "loopVolumeFlow" in sample;
  return {
    faceArea: block.faceArea,
    rowDepth: block.coil.surface.longitudinalPitch,
    circuitVelocity: isLoop
      ? loopTubeVelocity(sample as unknown as RecoveryCoilDesign) * block.coil.circuits
      : undefined,
  };
}

interface WithBlock {
  readonly block: CoilBlock;
}

function kindOf(values: RatedCoilValues) {
  return [steamCoil, steamCoilFaceBypass, recoveryCoil].find(({ name }) => name === values.kind)!;
}

/** The design of a way; a coil of its own correlation keeps it only with its own surface. */
function prepared(values: RatedCoilValues, way: Way, frame: Frame): WithBlock | "not built" {
  const isOwn = way.surface.head.name === values.surface.head.name;
  const changes = isOwn ? {} : { correlation: undefined, tubeWall: undefined, innerTube: undefined };
  try {
    return kindOf(values).prepare({ ...values, ...changes, ...way, length: undefined } as never, frame) as WithBlock;
  } catch (problem) {
    if (problem instanceof SectionProblem) return "not built";
    throw problem;
  }
}

/** A limit that a way breaks before anything is built. */
function outlineRefusal(
  { rows, circuits, outline }: Way,
  airflow: number,
  limits: CoilLimits,
): CoilRefusal | undefined {
  if (outline === undefined) return undefined;
  const { faceArea, rowDepth, circuitVelocity } = outline;
  if (airflow / faceArea > limits.faceVelocity) return "face velocity";
  if (rows * rowDepth + 2 * casingFlange > limits.depth) return "depth";
  if (circuitVelocity === undefined || circuits === undefined) return undefined;
  const velocity = circuitVelocity / circuits;
  return velocity < limits.leastTubeVelocity || velocity > limits.mostTubeVelocity ? "tube velocity" : undefined;
}

/** Rates way after way in the same two records, so that each solution is the start of the next. */
function examinerOf(task: SectionCoilTask) {
  const { values, frame, limits } = task;
  const kind = kindOf(values);
  const design = kind.prepare(values as never, frame) as WithBlock;
  const air = task.air(design.block);
  const airflow = actualAirflow(air);
  const open = { at: task.at(undefined, air.dryAirFlow), rating: kind.createRating() };
  const held = { at: task.at(task.wanted, air.dryAirFlow), rating: kind.createRating() };
  const rate = (each: WithBlock, { at, rating }: typeof open) => {
    rateSection(kind as never, each, air, at, rating);
    return rating;
  };
  return (way: Way, wanted: number | undefined): Examined => {
    const refusal = wanted === undefined ? undefined : outlineRefusal(way, airflow, limits);
    if (refusal !== undefined) return refusal;
    const made = wanted === undefined ? design : prepared(values, way, frame);
    if (made === "not built") return made;
    const rating = rate(made, open);
    const found =
      values.kind === recoveryCoil.name
        ? recoveryFigures(made as never, rating as never, design as never, limits, wanted !== undefined)
        : steamFigures(made as never, rating as never, design as never, () => rate(made, held) as never);
    if (typeof found === "string") return found;
    if (wanted !== undefined) {
      const missed = found.heats
        ? wanted - found.alternative.leavingDryBulb
        : found.alternative.leavingDryBulb - wanted;
      if (missed > leavingTolerance) return "leaving air";
      if (found.alternative.airPressureDrop > limits.airPressureDrop) return "air pressure drop";
    }
    return found.finish(isSame(way, values, made.block, design.block));
  };
}

/** A loop keeps the flow of the present one, whose own would follow the circuits. */
function withFlow({ values, frame }: SectionCoilTask): RatedCoilValues {
  if (values.kind !== recoveryCoil.name || values.loopFlow !== undefined) return values;
  const { loopVolumeFlow } = recoveryCoil.prepare(values as never, frame);
  return { ...values, loopFlow: loopVolumeFlow };
}

function isSame(way: Way, values: RatedCoilValues, block: CoilBlock, present: CoilBlock): boolean {
  return (
    way.surface.head.name === values.surface.head.name &&
    way.rows === values.rows &&
    Math.abs(way.fins / values.fins - 1) < 1e-6 &&
    block.coil.circuits === present.coil.circuits &&
    block.coil.turbulators === present.coil.turbulators
  );
}
