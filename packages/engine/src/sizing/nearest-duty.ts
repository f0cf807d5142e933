import type { Duty } from "#duty/duty";
import { spliceEdit } from "#form/splice";
import { metresPerInch } from "#quantity/inch-pound";
import { printQuantity } from "#quantity/print";
import type { Finding } from "#rule/finding";
import { ruleFigure } from "#rule/words";
import type { Attempt } from "./attempt.ts";
import type { Way } from "./contradiction.ts";
import { lessAir, moreRoom } from "./misfit.ts";

/** Duties that are tried, each a whole sizing, and those that are told. */
const mostTried = 4;
const mostTold = 2;

/**
 * The nearest duties that work, each alone and each proven by sizing for it: what the missed rules say of the duty, then
 * what usually gives way.
 */
export function nearestDuties(
  text: string,
  duty: Duty,
  nearest: Attempt,
  works: (text: string) => boolean,
): readonly Way[] {
  return provenWays(text, waysOf(duty, nearest), works);
}

/** Those of the ways that work, the first of each kind. */
export function provenWays(text: string, ways: readonly Way[], works: (text: string) => boolean): readonly Way[] {
  const told: Way[] = [];
  const kinds = new Set<string>();
  let tried = 0;
  for (const way of ways) {
    if (tried >= mostTried || told.length >= mostTold) break;
    // The nearest of each kind is enough.
    if (kinds.has(way.path)) continue;
    const changed = changedText(text, way);
    if (changed === undefined) continue;
    tried++;
    if (!works(changed)) continue;
    told.push(way);
    kinds.add(way.path);
  }
  return told;
}

function changedText(text: string, { path, value, also = [] }: Way): string | undefined {
  let changed: string | undefined = text;
  for (const change of [{ path, value }, ...also]) {
    const splice = spliceEdit(changed, change.path, change.value);
    if (!splice.ok) return undefined;
    changed = splice.text;
  }
  return changed;
}

function waysOf(duty: Duty, { failing, obstacles }: Attempt): readonly Way[] {
  const words = obstacles.join("; ");
  const isCooling = /cooling|chilled|dew point/.test(words);
  const isHeating = /winter|heating|preheat|steam/.test(words);
  return [
    ...failing.flatMap(wayOfRule),
    ...(isCooling ? coolingWays(duty) : []),
    ...(isHeating ? heatingWays(duty) : []),
    ...moreRoom(duty),
    ...lessAir(duty, [0.9, 0.75, 0.55, 0.35]),
    ...lessPressure(duty),
  ];
}

/** What a rule's own mend of the duty asks: the limit as large as the unit is, or the room that the unit needs. */
function wayOfRule({ entry, value, limit }: Finding): readonly Way[] {
  const { rule } = entry;
  return rule.mends
    .filter(({ at, field }) => at === "duty" && field.startsWith("limits."))
    .map(({ field }) => {
      const needed = field === "limits.serviceSide" ? limit : value;
      const typed =
        rule.quantity === "length"
          ? `${Math.ceil(needed / metresPerInch + 0.5)} in`
          : ruleFigure(needed * 1.01, rule.quantity, "ip").replace(/,/g, "");
      return { path: `duty.${field}`, value: typed, words: "only if the site or the road gives more" };
    });
}

function coolingWays({ setPoints, utilities }: Duty): readonly Way[] {
  const { coilLeaving, supply } = setPoints;
  const warmer = coilLeaving ?? supply;
  const path = coilLeaving === undefined ? "duty.setPoints.supply" : "duty.setPoints.coilLeaving";
  const water = utilities.chilledWater;
  return [1.5, 3].flatMap((step) => [
    ...(water === undefined
      ? []
      : [{ path: "duty.utilities.chilledWater.supply", value: degrees(water.supply - step), words: "colder water" }]),
    ...(warmer === undefined ? [] : [{ path, value: degrees(warmer + step), words: "warmer leaving air" }]),
  ]);
}

function heatingWays({ setPoints }: Duty): readonly Way[] {
  return [2, 5].map((step) => ({
    path: "duty.setPoints.winterSupply",
    value: degrees(setPoints.winterSupply - step),
    words: "cooler winter supply air",
  }));
}

function lessPressure({ externalStatic }: Duty): readonly Way[] {
  return [
    {
      path: "duty.externalStatic.pressure",
      value: printQuantity(0.7 * externalStatic.pressure, "pressureDifference", "ip"),
      words: "ducts with less resistance",
    },
  ];
}

function degrees(celsius: number): string {
  return printQuantity(celsius, "temperature", "ip").replace(/−/g, "-");
}
