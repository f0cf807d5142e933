import type { Coil } from "#component/coil/coil";
import { type Liquid, liquidDensity, liquidSpecificHeat } from "#fluid/liquid";
import { moistAirSpecificHeat } from "#fluid/moist-air";
import { steamLatentHeat } from "#fluid/steam";
import { metresPerInch } from "#quantity/inch-pound";
import {
  type DeclaredLiquidCoil,
  type DeclaredSteamCoil,
  declaredHumidityRatio,
  declaredLiquid,
} from "./declared-fields.ts";

/**
 * Shares by which a point's own figures may disagree. A rise printed to a tenth of a degree on ten, and a flow to whole
 * gallons, make up to 2 %; the air's side adds the supplier's own rounding of dry bulbs and his specific heat.
 */
const sideTolerance = { liquid: 0.03, air: 0.05 } as const;

/** How the coil declared differs from the job's. */
export function buildRemarks(
  coil: Coil,
  { rows, fins, ...rest }: DeclaredLiquidCoil | DeclaredSteamCoil,
): readonly string[] {
  const circuits = "circuits" in rest ? rest.circuits : undefined;
  const perInch = (pitch: number) => `${Number((pitch * metresPerInch).toFixed(2))} per in`;
  const differs = (what: string, declared: string, here: string) =>
    `declared with ${declared} ${what}, the job's coil has ${here}`;
  return [
    ...(rows === undefined || rows === coil.rows ? [] : [differs("rows", String(rows), String(coil.rows))]),
    ...(fins === undefined || Math.abs(fins / coil.finsPerLength - 1) < 0.01
      ? []
      : [differs("fins", perInch(fins), perInch(coil.finsPerLength))]),
    ...(circuits === undefined || circuits === coil.circuits
      ? []
      : [differs("circuits", String(circuits), String(coil.circuits))]),
  ];
}

/** What a point of a coil with liquid says against itself, the job's liquid and its wet or dry fins. */
export function liquidRemarks(
  point: DeclaredLiquidCoil,
  dryAirFlow: number,
  liquid: Liquid | undefined,
  ours: { readonly wetShare: number; readonly wetToDry: number },
): readonly string[] {
  const found: string[] = [];
  const theirs = declaredLiquid(point);
  if (liquid !== undefined && theirs.substance !== liquid.substance)
    found.push(`declared with ${theirs.substance}, the job's coil is fed with ${liquid.substance}`);
  if (point.airPressureDrop !== undefined && point.airPressureDropOf === "dry fins" && ours.wetShare > 0) {
    const more = Math.round(100 * ours.wetShare * (ours.wetToDry - 1));
    found.push(`its air pressure drop is of dry fins, and at its own point the fins run wet, by ours ${more} % more`);
  }
  if (point.airPressureDrop !== undefined && point.airPressureDropOf === "wet fins" && ours.wetShare === 0)
    found.push("its air pressure drop is of wet fins, and at its own point the fins stay dry");
  return [...found, ...sidesApart(point, dryAirFlow, theirs)];
}

/** Where heat by the liquid's own temperatures, or by the air's dry bulbs, is another than the capacity declared. */
function sidesApart(point: DeclaredLiquidCoil, dryAirFlow: number, liquid: Liquid): readonly string[] {
  const { capacity, enteringLiquid, leavingLiquid, enteringDryBulb, leavingDryBulb } = point;
  const found: string[] = [];
  if (leavingLiquid !== undefined) {
    const mean = (enteringLiquid + leavingLiquid) / 2;
    const massFlow = point.flow * liquidDensity(liquid, enteringLiquid);
    const heat = massFlow * liquidSpecificHeat(liquid, mean) * Math.abs(leavingLiquid - enteringLiquid);
    found.push(...apart("its liquid's flow and temperatures", heat, capacity, sideTolerance.liquid));
  }
  const cools = enteringLiquid < enteringDryBulb;
  const sensible = point.sensibleCapacity ?? (cools ? undefined : capacity);
  if (leavingDryBulb !== undefined && sensible !== undefined) {
    const specificHeat = moistAirSpecificHeat(declaredHumidityRatio(point));
    const heat = dryAirFlow * specificHeat * Math.abs(leavingDryBulb - enteringDryBulb);
    const what = `its airflow and dry bulbs`;
    found.push(...apart(what, heat, sensible, sideTolerance.air));
  }
  return found;
}

/** What a point of a steam coil says against itself. */
export function steamRemarks(point: DeclaredSteamCoil, dryAirFlow: number, pressure: number): readonly string[] {
  const { capacity, condensate, leavingDryBulb, enteringDryBulb } = point;
  const found: string[] = [];
  if (leavingDryBulb !== undefined) {
    const heat = dryAirFlow * moistAirSpecificHeat(0) * (leavingDryBulb - enteringDryBulb);
    found.push(...apart("its airflow and dry bulbs", heat, capacity, sideTolerance.air));
  }
  if (condensate !== undefined) {
    const heat = condensate * steamLatentHeat(pressure);
    found.push(...apart("its condensate at the steam's latent heat", heat, capacity, sideTolerance.air));
  }
  return found;
}

function apart(what: string, heat: number, declared: number, tolerance: number): readonly string[] {
  const share = heat / declared - 1;
  if (!(Math.abs(share) > tolerance)) return [];
  const percent = `${Math.abs(100 * share).toFixed(1)} % ${share < 0 ? "less" : "more"}`;
  return [`${what} come to ${percent} heat than it declares: ask the supplier which is meant`];
}
