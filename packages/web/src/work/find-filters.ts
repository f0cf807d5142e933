import type { FilterMedium } from "@oncethrough/engine/component/filter-medium";
import { type FilterLimitValues, filterLimitFields } from "@oncethrough/engine/design/filter-limits";
import { removeAt, spliceEdit } from "@oncethrough/engine/form/splice";
import { type Bench, type Proof, proveJob } from "@oncethrough/engine/mending/smallest-fix";
import type { FilterBankDesign } from "@oncethrough/engine/section/filter-bank/design";
import type { FilterBankRating } from "@oncethrough/engine/section/filter-bank/rate";
import type { UnitRating } from "@oncethrough/engine/unit/rating";
import { sectionPath } from "#state/bench-state";
import type { FoundFilter } from "#state/filter-choices";
import type { BookShelf } from "./book-shelf.ts";
import { readLimits } from "./read-limits.ts";
import type { AlternativesTask, FilterAlternatives } from "./task.ts";

/** A way to build the bank. */
interface Way {
  readonly medium: FilterMedium;
  readonly prefilter: FilterMedium | undefined;
  readonly rack: "flat" | "angled";
}

/** m: deeper panels are no prefilters, they do not stand in one frame with another. */
const deepestPrefilter = 0.11;

/**
 * Other media, prefilters and racks of a filter bank. Each is written into the job and the whole unit solved, judged,
 * weighed and priced anew, so that what it does to fan, length and rules is counted too.
 */
export function* findFilters(task: AlternativesTask, shelf: BookShelf): Generator<number, FilterAlternatives> {
  yield 0;
  const { proof, bench } = shelf.proof(task.text);
  const section = proof.job.unit.sections[task.index];
  if (section?.kind !== "filter bank") throw new Error("the section is no filter bank");
  const rating = askedAt(proof, task);
  const limits = readLimits(task.limits, filterLimitFields, undefined, shelf.catalogue);
  const present = section.design as FilterBankDesign;
  const ways = waysOf(present, limits, shelf);
  const candidates: FoundFilter[] = [];
  let refused = 0;
  for (const [place, way] of ways.entries()) {
    const after = proveJob(textOf(proof.text, task.index, way), bench);
    const found = after === undefined ? undefined : foundOf(after, task.index, way, rating.condition.key, proof, bench);
    if (found === undefined) refused += 1;
    else if (found.changeOutLoss <= (limits.changeOutLoss ?? Number.POSITIVE_INFINITY)) candidates.push(found);
    yield (place + 1) / ways.length;
  }
  const own: Way = { medium: present.medium, prefilter: present.prefilter, rack: present.rack };
  return {
    at: { key: rating.condition.key, name: rating.condition.name },
    looked: ways.length,
    refused,
    filters: candidates,
    present: foundOf(proof, task.index, own, rating.condition.key, proof, bench),
  };
}

/** The rating at the condition asked for, or where the bank loses most. */
function askedAt({ check }: Proof, { condition, index }: AlternativesTask): UnitRating {
  const loss = (each: UnitRating) => each.sections[index]?.totalPressureLoss ?? 0;
  const running = check.ratings.filter(
    ({ solved, operation, condition: { key } }) =>
      solved && operation.fansRunning && (condition === undefined || key === condition),
  );
  const most = running.toSorted((one, other) => loss(other) - loss(one))[0];
  if (most === undefined) throw new Error("the unit is not solved at the condition");
  return most;
}

function waysOf(present: FilterBankDesign, limits: FilterLimitValues, shelf: BookShelf): readonly Way[] {
  const names = shelf.catalogue.names("filter medium");
  const media = names.flatMap((name) => (shelf.catalogue.component("filter medium", name) as FilterMedium) ?? []);
  const least = limits.leastClass ?? present.medium.efficiencyClass;
  const racks = (["flat", "angled"] as const).filter((rack) => limits.rack === "either" || limits.rack === rack);
  return media
    .filter(({ efficiencyClass }) => efficiencyClass >= least)
    .flatMap((medium) => {
      const before = media.filter(
        (each) => each.efficiencyClass < medium.efficiencyClass && each.panelDepth <= deepestPrefilter,
      );
      const prefilters = [
        ...(limits.prefilter === "with" ? [] : [undefined]),
        ...(limits.prefilter === "without" ? [] : before),
      ];
      return prefilters.flatMap((prefilter) => racks.map((rack) => ({ medium, prefilter, rack })));
    });
}

/** The job with another bank. */
function textOf(text: string, index: number, { medium, prefilter, rack }: Way): string {
  const path = sectionPath(index);
  let now = text;
  const put = (field: string, value: string) => {
    const splice = spliceEdit(now, `${path}.${field}`, value);
    if (splice.ok) now = splice.text;
  };
  put("medium", medium.head.name);
  put("rack", rack);
  if (prefilter !== undefined) put("prefilter", prefilter.head.name);
  else {
    const splice = removeAt(now, `${path}.prefilter`);
    if (splice.ok) now = splice.text;
  }
  return now;
}

/** What the unit with a bank comes to; undefined where it does not solve at the condition. */
function foundOf(
  after: Proof,
  index: number,
  { medium, prefilter, rack }: Way,
  condition: string,
  before: Proof,
  bench: Bench,
): FoundFilter | undefined {
  const rating = after.check.ratings.find((each) => each.condition.key === condition);
  const section = after.job.unit.sections[index];
  if (rating?.solved !== true || section === undefined) return undefined;
  const record = rating.sections[index] as FilterBankRating;
  const broken = [...after.against].filter((each) => !before.against.has(each)).length;
  return {
    medium: medium.head.name,
    efficiencyClass: medium.efficiencyClass,
    prefilter: prefilter?.head.name,
    rack,
    panels: (section.design as FilterBankDesign).panelCount,
    panelVelocity: record.panelVelocity,
    cleanLoss: record.cleanLoss,
    changeOutLoss: record.changeOutLoss,
    lifeHours: record.lifeHours,
    electricPower: rating.fanElectricPower,
    massChange: after.mass - before.mass,
    priceChange: bench.books === undefined ? undefined : (after.price ?? 0) - (before.price ?? 0),
    broken,
  };
}
