import { buildCoil, type Coil, circuitChoices } from "#component/coil/coil";
import type { FinnedSurface } from "#component/finned-surface/family";
import type { FinMaterialName, TubeMaterialName } from "#component/finned-surface/material";
import { inBothUnits } from "../both-units.ts";
import { type Frame, SectionProblem } from "../contract.ts";

/** What the core's fields read, with what a kind adds. */
export interface CoreValues {
  readonly surface: FinnedSurface;
  readonly rows: number;
  readonly fins: number;
  readonly finnedHeight: number | undefined;
  readonly finnedLength: number | undefined;
  readonly stacked: number;
  readonly finThickness: number | undefined;
  readonly finMaterial: FinMaterialName | undefined;
  readonly tubeWall: number | undefined;
  readonly tubeMaterial: TubeMaterialName | undefined;
  readonly correlation?: string | undefined;
  readonly foulingInside: number;
  readonly foulingOutside: number;
  readonly length: number | undefined;
}

/** How a kind places its coil in the cabinet. */
export interface Placing {
  /** m of floor below the lowest casing: pan and support. */
  readonly base: number;
  /** m between the casings of stacked coils. */
  readonly between: number;
  /** m along the flow, before and behind the casing. */
  readonly upstream: number;
  readonly downstream: number;
  /** m that the length of the tubes is short of the clear width: bends on one side, headers on the other. */
  readonly ends: number;
}

/** One coil, or several alike one above the other, in their place in the cabinet. */
export interface CoilBlock {
  readonly coil: Coil;
  readonly stacked: number;
  /** m², of all coils. */
  readonly faceArea: number;
  readonly cabinetArea: number;
  /** m, of one casing: along the flow and high. */
  readonly casingDepth: number;
  readonly casingHeight: number;
  /** m from the floor to the underside of the lowest casing; from casing to casing; from the entry plane. */
  readonly base: number;
  readonly pitch: number;
  readonly start: number;
  readonly length: number;
}

/** m of flange around the fins, top and bottom, and before and behind them. */
export const casingFlange = 0.038;

/** Builds the coils of a section and places them; `passes` undefined takes the circuits as given. */
export function prepareCoilBlock(
  values: CoreValues,
  frame: Frame,
  placing: Placing,
  water:
    | {
        readonly circuits: number | undefined;
        readonly flow: "counter" | "parallel";
        readonly turbulators: boolean;
        readonly ends?: "as the circuits give" | "same end" | "opposite ends";
      }
    | "steam",
): CoilBlock {
  const { stacked } = values;
  const surface = namedSurface(values.surface, values.correlation);
  const pitch = surface.transversePitch;
  const room = (frame.height - placing.base - 0.02 - (stacked - 1) * placing.between) / stacked - 2 * casingFlange;
  const tubesPerRow = tubesFor(values.finnedHeight, room, pitch);
  const finnedLength = values.finnedLength ?? frame.width - placing.ends;
  const longest = frame.width - 2 * casingFlange;
  if (!(finnedLength <= longest + 1e-9)) {
    throw new SectionProblem(
      "finnedLength",
      "the tubes with their tube sheets are longer than the cabinet is wide",
      `at most ${inBothUnits(longest, "length")}`,
    );
  }
  if (!(finnedLength > 0.1)) {
    throw new SectionProblem("finnedLength", "the cabinet leaves no length for the tubes", "a wider cabinet");
  }
  const circuits = water === "steam" ? values.rows * tubesPerRow : (water.circuits ?? tubesPerRow);
  if ((values.rows * tubesPerRow) % circuits !== 0) {
    const choices = circuitChoices(values.rows, tubesPerRow).join(", ");
    throw new SectionProblem(
      "circuits",
      `${circuits} circuits do not divide the ${values.rows} rows of ${tubesPerRow} tubes of a coil`,
      choices,
    );
  }
  if (water !== "steam") checkEnds(water.ends, values.rows, tubesPerRow, circuits);
  const coil = built({
    surface,
    rows: values.rows,
    tubesPerRow,
    finnedLength,
    finsPerLength: values.fins,
    finThickness: values.finThickness ?? surface.finThickness,
    finMaterial: values.finMaterial ?? surface.finMaterial,
    tubeWall: values.tubeWall ?? surface.tubeWall,
    tubeMaterial: values.tubeMaterial ?? surface.tubeMaterial,
    circuits,
    flow: water === "steam" ? "counter" : water.flow,
    turbulators: water === "steam" ? false : water.turbulators,
    foulingInside: values.foulingInside,
    foulingOutside: values.foulingOutside,
  });
  const casingDepth = coil.bank.depth + 2 * casingFlange;
  const casingHeight = coil.bank.finnedHeight + 2 * casingFlange;
  const needed = placing.upstream + casingDepth + placing.downstream;
  const length = values.length ?? needed;
  if (length < casingDepth) {
    throw new SectionProblem(
      "length",
      "the coil is deeper than the section is long",
      `at least ${inBothUnits(casingDepth, "length")}`,
    );
  }
  return {
    coil,
    stacked,
    faceArea: coil.bank.faceArea * stacked,
    cabinetArea: frame.width * frame.height,
    casingDepth,
    casingHeight,
    base: placing.base,
    pitch: casingHeight + placing.between,
    start: Math.min(placing.upstream, length - casingDepth),
    length,
  };
}

/** Whether the passes bring supply and return to the ends asked for. */
function checkEnds(
  ends: "as the circuits give" | "same end" | "opposite ends" | undefined,
  rows: number,
  tubesPerRow: number,
  circuits: number,
): void {
  if (ends === undefined || ends === "as the circuits give") return;
  const rest = ends === "same end" ? 0 : 1;
  const isRight = (each: number) => ((rows * tubesPerRow) / each) % 2 === rest;
  if (isRight(circuits)) return;
  const passes = (rows * tubesPerRow) / circuits;
  throw new SectionProblem(
    "connectionEnds",
    `${circuits} circuits make ${passes} passes, which end ${ends === "same end" ? "opposite their supply" : "where they began"}`,
    `circuits: ${circuitChoices(rows, tubesPerRow).filter(isRight).join(", ") || "none of them does"}`,
  );
}

/** The surface rated by the correlation that a coil names, where it names one. */
function namedSurface(surface: FinnedSurface, correlation: string | undefined): FinnedSurface {
  if (correlation === undefined || correlation === surface.correlation) return surface;
  const isTested = surface.tested !== undefined || surface.heatFactor !== 1 || surface.frictionFactor !== 1;
  if (isTested) {
    const own = surface.tested === undefined ? `multipliers of ${surface.correlation}` : "a tested curve";
    throw new SectionProblem(
      "correlation",
      `the record "${surface.head.name}" has ${own}, which another correlation would spoil`,
      "no correlation here, or a record without multipliers",
    );
  }
  return { ...surface, correlation };
}

/** Whole tubes that the height wanted, or the room left, takes. */
function tubesFor(wanted: number | undefined, room: number, pitch: number): number {
  const most = Math.floor(room / pitch + 1e-6);
  if (most < 1)
    throw new SectionProblem("stacked", "the cabinet is too low for so many coils", "fewer coils or a higher cabinet");
  if (wanted === undefined) return most;
  const tubes = Math.round(wanted / pitch);
  if (tubes < 1) {
    throw new SectionProblem(
      "finnedHeight",
      "the fins are lower than one tube pitch",
      `at least ${inBothUnits(pitch, "length")}`,
    );
  }
  if (tubes > most) {
    throw new SectionProblem(
      "finnedHeight",
      "the coil does not fit the cabinet with its casing, pan and neighbours",
      `at most ${inBothUnits(most * pitch, "length")}`,
    );
  }
  return tubes;
}

/** The builder's refusals as refusals of the section. */
function built(make: Parameters<typeof buildCoil>[0]): Coil {
  try {
    return buildCoil(make);
  } catch (error) {
    if (error instanceof RangeError) throw new SectionProblem("surface", error.message, "a buildable coil");
    throw error;
  }
}
