import type { Duty } from "#duty/duty";
import type { Machine } from "#rule/contract";
import { mayDecide } from "#rule/contract";
import type { Profile } from "#rule/profile";
import { rules } from "#rule/rules";
import { ruleFigure } from "#rule/words";
import { inBothUnits } from "#section/both-units";
import type { Frame } from "#section/contract";
import type { Contradiction } from "./contradiction.ts";

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

/** Why no cross-section does; `needed` is the one that would. */
export function noCabinet(needed: Frame | undefined): string {
  if (needed === undefined) {
    return "no cross-section that is built takes this airflow within the velocity limits; split it over several units";
  }
  const { width, height } = needed;
  return `no cross-section within what site and road take of width and height passes this airflow within the velocity limits; the smallest is ${inBothUnits(width, "length")} wide and ${inBothUnits(height, "length")} high, clear inside`;
}
