import { metresPerInch } from "#quantity/inch-pound";
import { printQuantity } from "#quantity/print";
import type { Finding } from "#rule/finding";
import { ruleFigure } from "#rule/words";
import { beyondFrame } from "./cabinet.ts";
import type { Way } from "./contradiction.ts";
import type { Failure } from "./size-once.ts";

/** One change of the duty file. */
export interface Change {
  readonly path: string;
  readonly value: string;
}

const foot = 12 * metresPerInch;
/** m of rail beyond the usual one, where the fan sucks hard. */
const deepTrap = 4 * metresPerInch;

/** What site and road must give for the cross-section that is needed, and for what the rules of the nearest unit ask of them. */
export function moreRoom(failure: Failure): readonly Change[] {
  if (failure.outcome === "contradiction") return [];
  const asked = failure.outcome === "no unit" ? failure.nearest.failing.flatMap(roomOfRule) : [];
  const known = new Set(asked.map(({ path }) => path));
  return [...asked, ...roomOfFrame(failure).filter(({ path }) => !known.has(path))];
}

function roomOfFrame({ duty, room: { needed } }: Exclude<Failure, { outcome: "contradiction" }>): readonly Change[] {
  if (needed === undefined) return [];
  const beyond = beyondFrame({ duty, draft: { casing: { "panel thickness": "3 in" }, sections: [] } }, needed.width);
  const width = needed.width + beyond.width;
  const height = needed.height + beyond.height + deepTrap;
  const wanted = { shippingWidth: width, shippingHeight: height, width, height };
  return Object.entries(wanted).flatMap(([name, most]) => {
    const present = duty.limits[name as keyof typeof wanted];
    if (present === undefined || present >= most) return [];
    return [{ path: `duty.limits.${name}`, value: `${Math.ceil(most / foot - 1e-6)} ft` }];
  });
}

/** The limit as large as the unit is, or the room that the unit needs, where the duty holds the limit. */
function roomOfRule({ entry: { rule }, value, limit }: Finding): readonly Change[] {
  return rule.mends
    .filter(({ at, field }) => at === "duty" && field.startsWith("limits."))
    .map(({ field }) => {
      const needed = field === "limits.serviceSide" ? limit : value;
      const typed =
        rule.quantity === "length"
          ? `${Math.ceil(needed / metresPerInch + 0.5)} in`
          : ruleFigure(needed * 1.01, rule.quantity, "ip").replace(/,/g, "");
      return { path: `duty.${field}`, value: typed };
    });
}

/** m³/s of a hundred cubic feet a minute. */
const hundred = 0.0471947;

/** Less air, a share of what is asked; the least flow with it where that would be more. */
export function lessAir({ supplyAirflow: { design, minimum } }: Failure["duty"], share: number): Way {
  const typed = (flow: number) =>
    printQuantity(Math.max(1, Math.floor(flow / hundred)) * hundred, "airflow", "ip").replace(/,/g, "");
  const way = {
    path: "duty.supplyAirflow.design",
    value: typed(share * design),
    words: "less air, the rest by another unit",
  };
  if (minimum === undefined || minimum <= share * design) return way;
  return { ...way, also: [{ path: "duty.supplyAirflow.minimum", value: typed(share * minimum) }] };
}

/** A least flow nearer to the design one, where a fan does not stand the least; the nearest first. */
export function steadierFlow(failure: Failure): readonly Way[] {
  const { design, minimum = design } = failure.duty.supplyAirflow;
  if (!/wheel|stead|peak/.test(wordsOf(failure))) return [];
  return [0.75, 1]
    .filter((share) => share * design > 1.01 * minimum)
    .map((share) => ({
      path: "duty.supplyAirflow.minimum",
      value: printQuantity(share * design, "airflow", "ip").replace(/,/g, ""),
      words: "more air at the least flow, which the fan stands steadily",
    }));
}

/** Water that does not freeze in a stop, where a rule of the unit that came nearest asks it of the duty. */
export function frostproofWater(failure: Failure): readonly Way[] {
  if (failure.outcome !== "no unit") return [];
  const fields = failure.nearest.failing.flatMap(({ entry }) =>
    entry.rule.mends.filter(({ at }) => at === "duty").map(({ field }) => field),
  );
  return [...new Set(fields)].flatMap((field): readonly Way[] => {
    const path = `duty.${field}`;
    if (field.endsWith(".pumpRunsWhenStopped")) {
      return [{ path, value: "yes", words: "water that flows in the tubes while the fan stands" }];
    }
    if (!field.endsWith(".glycol")) return [];
    const also = [{ path: path.replace(/glycol$/, "concentration"), value: "35 %" }];
    return [{ path, value: "propylene glycol", words: "glycol in the water", also }];
  });
}

/** Ducts with less resistance, the nearest first. */
export function lessPressure(failure: Failure): readonly Way[] {
  if (failure.outcome === "contradiction") return [];
  return [0.7, 0.4].map((share) => ({
    path: "duty.externalStatic.pressure",
    value: printQuantity(share * failure.duty.externalStatic.pressure, "pressureDifference", "ip"),
    words: "ducts with less resistance",
  }));
}

/** K by which water is colder or air less treated, the most first. */
const steps = [5, 1.5, 3] as const;

/** Where a coil does not reach what is wanted: water that is colder or hotter, or air that is left warmer or cooler. */
export function capacityWays(failure: Failure, what: "water" | "air"): readonly Way[] {
  if (failure.outcome !== "no unit") return [];
  const words = wordsOf(failure);
  const { setPoints, utilities } = failure.duty;
  if (/no chilled-water coil|warmer than wanted|behind the cooling coil|dew point/.test(words)) {
    const water = utilities.chilledWater;
    if (what === "water") return water === undefined ? [] : steps.map((step) => colder(water.supply - step));
    return steps.flatMap((step) => warmer(setPoints, step));
  }
  if (!/no (steam|hot-water) coil|colder than wanted|heating coil reaches/.test(words)) return [];
  if (what === "water") return [];
  return steps.map((step) => ({
    path: "duty.setPoints.winterSupply",
    value: degrees(setPoints.winterSupply - step),
    words: "cooler winter supply air",
  }));
}

function colder(celsius: number): Way {
  return { path: "duty.utilities.chilledWater.supply", value: degrees(celsius), words: "colder water" };
}

function warmer({ coilLeaving, supply }: Failure["duty"]["setPoints"], step: number): readonly Way[] {
  const wanted = coilLeaving ?? supply;
  if (wanted === undefined) return [];
  const path = coilLeaving === undefined ? "duty.setPoints.supply" : "duty.setPoints.coilLeaving";
  return [{ path, value: degrees(wanted + step), words: "warmer leaving air" }];
}

function wordsOf(failure: Failure): string {
  return failure.outcome === "no unit" ? failure.nearest.obstacles.join("; ") : "";
}

function degrees(celsius: number): string {
  return printQuantity(celsius, "temperature", "ip").replace(/−/g, "-");
}
