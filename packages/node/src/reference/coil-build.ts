import { buildCoil, type Coil } from "@oncethrough/engine/component/coil/coil";
import { type CoilResistances, resistanceCoil } from "@oncethrough/engine/component/coil/resistance-coil";
import { correlationOfName } from "@oncethrough/engine/component/finned-surface/correlation";
import type { FinnedSurface } from "@oncethrough/engine/component/finned-surface/family";
import type { FinMaterialName, TubeMaterialName } from "@oncethrough/engine/component/finned-surface/material";
import type { RangeLimit } from "@oncethrough/engine/component/finned-surface/range-limit";
import { metresPerInch } from "@oncethrough/engine/quantity/inch-pound";
import { type CaseData, isCaseData } from "./case-data.ts";
import { firstNumber, needNumber, partOf } from "./coil-inputs.ts";

/** A surface by which a built coil of a case is run: the default model, or a rival beside it. */
export interface SurfaceChoice {
  /** Added to the name of a quantity; empty for the default. */
  readonly suffix: string;
  readonly changes: Partial<FinnedSurface>;
  /** Beyond this distance from its range a rival is not shown. */
  readonly farthest: number;
}

/**
 * The proof runs by a correlation named beforehand that knows nothing of the measured coils, however far outside its range
 * it is used. Beside it the one fitted to those coils themselves, another independent one, and the one that the program
 * chooses by itself.
 */
export const surfaceChoices: readonly SurfaceChoice[] = [
  { suffix: "", changes: {}, farthest: Number.POSITIVE_INFINITY },
  {
    suffix: " (Elmahdy-Mitalas surface)",
    changes: { correlation: "Elmahdy-Mitalas 1977", wetHeat: "Elmahdy-Mitalas 1977" },
    farthest: 1,
  },
  { suffix: " (Gray-Webb surface)", changes: { correlation: "Gray-Webb 1986" }, farthest: 0.5 },
  {
    suffix: " (chosen by itself)",
    changes: { correlation: undefined, wetHeat: undefined },
    farthest: Number.POSITIVE_INFINITY,
  },
];

/** Whether a case says how its coil is built. */
export function hasGeometry(data: CaseData): boolean {
  return isCaseData(data.geometry) && Object.values(data.geometry).some((value) => typeof value === "number");
}

/** The coil of a case by its geometry: clean tubes, bare between the fins, conductivities as the case gives them. */
export function coilOfGeometry(geometry: CaseData, changes: Partial<FinnedSurface>): Coil {
  const rows = needNumber(geometry, "rows");
  const diameter = needNumber(geometry, "tube_od_m");
  const tubesPerRow = tubesPerRowOf(geometry);
  const inside = firstNumber(geometry, "tube_id_m");
  const tubeWall = inside === null ? needNumber(geometry, "tube_wall_m") : (diameter - inside) / 2;
  const finThickness = needNumber(geometry, "fin_thickness_m");
  const surface: FinnedSurface = {
    ...plainSurface,
    tubeOutsideDiameter: diameter,
    tubeWall,
    transversePitch: firstNumber(geometry, "Pt_m") ?? needNumber(geometry, "finned_height_m") / tubesPerRow,
    longitudinalPitch: firstNumber(geometry, "Pl_m") ?? needNumber(geometry, "fin_depth_m", "depth_m") / rows,
    staggered: !/in.?line/i.test(String(geometry.arrangement)),
    finThickness,
    ...changes,
  };
  const coil = buildCoil({
    surface,
    rows,
    tubesPerRow,
    finnedLength: needNumber(geometry, "finned_length_m"),
    finsPerLength: finsPerLengthOf(geometry),
    finThickness,
    finMaterial: finMaterialOf(geometry),
    tubeWall,
    tubeMaterial: tubeMaterialOf(geometry),
    circuits: needNumber(geometry, "circuits"),
    flow: geometry.flow === "parallel" ? "parallel" : "counter",
    turbulators: false,
    foulingInside: firstNumber(geometry, "fouling_m2K_W") ?? 0,
    foulingOutside: 0,
  });
  return { ...coil, finConductivity: finConductivityOf(geometry) ?? coil.finConductivity };
}

function tubesPerRowOf(geometry: CaseData): number {
  const given = firstNumber(geometry, "tubes_per_row", "tubes_high");
  return given ?? Math.round(needNumber(geometry, "finned_height_m") / needNumber(geometry, "Pt_m"));
}

function finsPerLengthOf(geometry: CaseData): number {
  const spacing = firstNumber(geometry, "fin_spacing_m");
  if (spacing !== null) return 1 / spacing;
  const perMetre = firstNumber(geometry, "fins_per_m");
  return perMetre ?? needNumber(geometry, "fins_per_inch") / metresPerInch;
}

function finMaterialOf(geometry: CaseData): FinMaterialName {
  const words = String(geometry.fin_material ?? geometry.fin ?? geometry.materials ?? "");
  if (/^copper|copper fin|cu fin/i.test(words)) return "copper";
  return /stainless/i.test(words) ? "stainless steel" : "aluminium";
}

function tubeMaterialOf(geometry: CaseData): TubeMaterialName {
  const words = String(geometry.tube_material ?? geometry.tube ?? "");
  if (/stainless/i.test(words)) return "stainless steel";
  if (/cupro|90.?10/i.test(words)) return "cupronickel";
  return /steel/i.test(words) ? "carbon steel" : "copper";
}

/** `k_fin`, or the figure behind `Al … k` in words. */
function finConductivityOf(geometry: CaseData): number | null {
  const given = firstNumber(geometry, "k_fin");
  if (given !== null) return given;
  const words = String(geometry.fin ?? geometry.materials ?? "");
  const found = /Al[^,]*k\s?(\d+)/.exec(words)?.[1];
  return found === undefined ? null : Number(found);
}

/** How far the correlation of a coil is used outside its published range, and which variable leads; in words. */
export function rangeOf(coil: Coil, reynolds: number): { readonly distance: number; readonly words: string } {
  const { name, limits } = correlationOfName(coil.surface.correlation);
  const beyond = (limit: RangeLimit) => {
    const value = limit.value(coil.bank, reynolds);
    return Math.max(value / limit.high - 1, limit.low / value - 1);
  };
  const worst = limits.reduce((most, limit) => (beyond(limit) > beyond(most) ? limit : most));
  const distance = Math.max(0, beyond(worst));
  // A part in a million is rounding of unit conversion.
  if (distance < 1e-6) return { distance: 0, words: `${name} within its range` };
  const variable = worst.what.split(",")[0];
  return { distance, words: `${name} outside its range by ${Math.round(100 * distance)} % (${variable})` };
}

/** The coil of a case by its resistances; throws a RangeError when it gives none. */
export function coilOfResistances(data: CaseData, inputs: CaseData): Coil {
  const resistances = resistancesOf(inputs) ?? resistancesOf(partOf(data, "published_model"));
  if (resistances === undefined) throw new RangeError("neither a geometry nor resistances are given");
  if (typeof inputs.flow === "string" && !/counter/i.test(inputs.flow)) {
    throw new RangeError(`a coil by resistances runs in counterflow, not in ${inputs.flow}`);
  }
  return resistanceCoil(resistances, 1);
}

function resistancesOf(data: CaseData): CoilResistances | undefined {
  const air = firstNumber(data, "R_air", "R_air_K_W", "R_air_n");
  const liquid = firstNumber(data, "R_water", "R_fluid", "R_fluid_K_W", "R_glycol_wall_n");
  if (air !== null && liquid !== null) {
    return checked({ air, metal: firstNumber(data, "R_metal", "R_metal_K_W") ?? 0, liquid });
  }
  const byAir = firstNumber(data, "UA_air_incl_fin_eff", "UA_air");
  const byWater = firstNumber(data, "UA_water");
  if (byAir !== null && byWater !== null) return checked({ air: 1 / byAir, metal: 0, liquid: 1 / byWater });
  const total = firstNumber(data, "UA_total_W_K", "UA_total");
  // Half of the resistance on either side, as in the textbook case that such files go back to.
  return total === null ? undefined : checked({ air: 0.5 / total, metal: 0, liquid: 0.5 / total });
}

function checked(resistances: CoilResistances): CoilResistances {
  const { air, metal, liquid } = resistances;
  if (air > 0 && liquid > 0 && metal >= 0 && air < Number.POSITIVE_INFINITY) return resistances;
  throw new RangeError(`resistances ${air}, ${metal}, ${liquid} K/W: more than 0 is wanted`);
}

const plainSurface: FinnedSurface = {
  head: { name: "published case", typical: false, basis: "published", source: "", date: "", note: "" },
  pattern: "plain",
  tubeOutsideDiameter: 0.016,
  tubeWall: 0.0005,
  tubeMaterial: "copper",
  transversePitch: 0.0381,
  longitudinalPitch: 0.033,
  staggered: true,
  finMaterial: "aluminium",
  finThickness: 0.00016,
  collars: false,
  correlation: "Wang-Chi-Chang 2000",
  heatFactor: 1,
  frictionFactor: 1,
  contactResistance: 0,
  tubeHeatFactor: 1,
  wetHeat: "Wang 2000",
  wetHeatFactor: undefined,
  lewisFactor: 1,
  wetFriction: "common practice",
  wetFrictionFactor: undefined,
  tested: undefined,
};
