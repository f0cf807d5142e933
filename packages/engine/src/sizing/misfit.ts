import type { Duty } from "#duty/duty";
import { printQuantity } from "#quantity/print";
import type { Machine } from "#rule/contract";
import { mayDecide } from "#rule/contract";
import type { Profile } from "#rule/profile";
import { rules } from "#rule/rules";
import { ruleFigure } from "#rule/words";
import { inBothUnits } from "#section/both-units";
import type { Contradiction, Way } from "./contradiction.ts";

/** Rules whose value stands in the duty, so that no unit changes it. */
const ofTheDuty = /^intake (to|above)|^unit size cap$/;

/** Rules of the owner that the duty itself misses, before anything is sized. */
export function dutyContradictions(duty: Duty, profile: Profile): readonly Contradiction[] {
  return rules.flatMap((rule): readonly Contradiction[] => {
    if (rule.scope !== "machine" || !ofTheDuty.test(rule.id) || typeof rule.limit !== "number") return [];
    const own = profile.limits.get(rule.id);
    const isAsked = profile.also.has(rule.id) || rule.byDefault !== false;
    const isLetGo = profile.without.has(rule.id) || profile.waivers.some((each) => each.rule === rule.id);
    if (own === undefined && (!isAsked || isLetGo || !(mayDecide(rule) || profile.also.has(rule.id)))) return [];
    const limit = own?.limit ?? rule.limit;
    const value = rule.value({ duty } as Machine);
    if (value === undefined || Number.isNaN(value)) return [];
    if (rule.sense === "at least" ? value >= limit : value <= limit) return [];
    const figure = (each: number) => ruleFigure(each, rule.quantity, "ip");
    const words = `the duty says of the ${rule.measures} ${figure(value)}, and its owner's rule asks ${rule.sense} ${figure(limit)}`;
    const nearest = rule.mends
      .filter(({ at }) => at === "duty")
      .map(({ field }) => ({ path: `duty.${field}`, value: typedFigure(limit, rule.quantity), words: rule.remedy }));
    return [{ words, nearest }];
  });
}

function typedFigure(value: number, quantity: (typeof rules)[number]["quantity"]): string {
  return ruleFigure(value, quantity, "ip").replace(/[−]/g, "-").replace(/,/g, "");
}

/** Why no cross-section is built for a duty, and which duties one is built for. */
export function noCabinet(
  duty: Duty,
  best: { readonly width: number; readonly height: number } | undefined,
  mayTake: (duty: Duty) => boolean,
): Contradiction {
  const smaller = smallerAirflow(duty, mayTake);
  if (best === undefined) {
    const words =
      "no cross-section that is built takes this airflow within the velocity limits; split it over several units";
    return { words, nearest: smaller };
  }
  const { width, height } = best;
  const words = `no cross-section within what site and road take of width and height passes this airflow within the velocity limits; the smallest is ${inBothUnits(width, "length")} wide and ${inBothUnits(height, "length")} high, clear inside`;
  return { words, nearest: [...moreRoom(duty), ...smaller] };
}

const foot = 0.3048;

/** More of what road and site take, one limit or all of them; only the limits that there are. */
export function moreRoom({ limits }: Duty): readonly Way[] {
  const names = ["shippingWidth", "shippingHeight", "width", "height"] as const;
  const present = names.filter((name) => limits[name] !== undefined);
  const change = (name: (typeof names)[number], share: number) => ({
    path: `duty.limits.${name}`,
    value: `${Math.ceil((limits[name]! * share) / foot - 1e-6)} ft`,
  });
  const words = "only if the road and the site give more";
  const single = present.map((name) => ({ ...change(name, 1.25), words }));
  const together = [1.15, 1.4, 1.8].map((share) => {
    const [first, ...also] = present.map((name) => change(name, share));
    return { ...first!, words, also };
  });
  return [together[0]!, ...single.slice(0, 2), ...together.slice(1)];
}

/** Less air, in shares of what is asked; the least flow with it where that would be more. */
export function lessAir({ supplyAirflow: { design, minimum } }: Duty, shares: readonly number[]): readonly Way[] {
  const typed = (flow: number) =>
    printQuantity(Math.floor(flow / hundred) * hundred, "airflow", "ip").replace(/,/g, "");
  return shares.map((share) => {
    const way = {
      path: "duty.supplyAirflow.design",
      value: typed(share * design),
      words: "less air, the rest by another unit",
    };
    if (minimum === undefined || minimum <= share * design) return way;
    return { ...way, also: [{ path: "duty.supplyAirflow.minimum", value: typed(share * minimum) }] };
  });
}

/** m³/s of a hundred cubic feet a minute. */
const hundred = 0.0471947;

/** Shares of the airflow that a cross-section takes at once, as far as is seen before it is sized. */
function smallerAirflow(duty: Duty, mayTake: (duty: Duty) => boolean): readonly Way[] {
  const shares = Array.from({ length: 18 }, (_, index) => 0.95 - 0.05 * index);
  const taken = shares.filter((share) =>
    mayTake({ ...duty, supplyAirflow: { ...duty.supplyAirflow, design: share * duty.supplyAirflow.design } }),
  );
  return lessAir(
    duty,
    taken.filter((_, index) => index === 0 || index === 2),
  );
}
