import type { FilterBankDesign } from "@oncethrough/engine/section/filter-bank/design";
import type { UnitSection } from "@oncethrough/engine/unit/unit";
import type { Choice, ChoiceColumn, Choices, FieldChange } from "./choices.ts";

/** A filter bank found: the whole unit was solved, judged, weighed and priced with it. */
export interface FoundFilter {
  readonly medium: string;
  readonly efficiencyClass: number;
  readonly prefilter: string | undefined;
  readonly rack: "flat" | "angled";
  readonly panels: number;
  /** m/s, Pa, hours, W, at the condition. */
  readonly panelVelocity: number;
  readonly cleanLoss: number;
  readonly changeOutLoss: number;
  readonly lifeHours: number;
  readonly electricPower: number;
  /** kg and cents against the unit as it is. */
  readonly massChange: number;
  readonly priceChange: number | undefined;
  /** What the unit holds now and would not hold then: rules, set points, conditions. */
  readonly broken: number;
}

/** What the search for filters came to. */
export interface FiltersFound {
  readonly at: { readonly name: string };
  readonly looked: number;
  readonly refused: number;
  readonly filters: readonly FoundFilter[];
  readonly present: FoundFilter | undefined;
}

const columns: readonly ChoiceColumn[] = [
  { key: "medium", name: "medium", quantity: "words", meaning: "final filter" },
  { key: "class", name: "class", quantity: "count", meaning: "efficiency class of the final filter" },
  { key: "prefilter", name: "prefilter", quantity: "words", meaning: "prefilter in the same frames" },
  { key: "rack", name: "rack", quantity: "words", meaning: "how the panels stand" },
  { key: "panels", name: "panels", quantity: "count", meaning: "number of panels" },
  { key: "velocity", name: "velocity", quantity: "velocity", meaning: "velocity on the panels" },
  { key: "clean", name: "clean", quantity: "pressureDifference", meaning: "loss of the clean bank" },
  { key: "changeOut", name: "change-out", quantity: "pressureDifference", meaning: "loss of the bank at change-out" },
  { key: "life", name: "hours", quantity: "count", meaning: "hours from clean to change-out" },
  { key: "power", name: "fan, mains", quantity: "electricPower", meaning: "fan power from the mains" },
  { key: "price", name: "price by", quantity: "money", meaning: "change of the unit's price" },
  { key: "mass", name: "mass by", quantity: "mass", meaning: "change of the unit's dry mass" },
  { key: "broken", name: "breaks", quantity: "count", meaning: "rules and set points held now and missed then" },
];

/** Other filters for a bank; the present one with its figures at the same condition. */
export function filterChoices(section: UnitSection, found: FiltersFound): Choices {
  const design = section.design as FilterBankDesign;
  const { filters, present, looked, refused, at } = found;
  const isPresent = (each: FoundFilter) => present !== undefined && keyOf(each) === keyOf(present);
  return {
    columns,
    list: filters.map((each) => toChoice(each, design)),
    present: filters.find(isPresent)
      ? toChoice(filters.find(isPresent)!, design)
      : present && toChoice(present, design),
    plot: { x: { column: "changeOut", better: "less" }, y: { column: "power", better: "less" } },
    found: `${filters.length} of ${looked} ways, each with the whole unit solved anew at ${at.name}`,
    remarks: [
      ...(refused === 0 ? [] : [`${refused} left out: no room in the section's length, or not solved`]),
      "hours at the dust of the section's field; generic media, a supplier's figures decide",
    ],
  };
}

function keyOf({ medium, prefilter, rack }: FoundFilter): string {
  return [medium, prefilter ?? "none", rack].join("|");
}

function toChoice(each: FoundFilter, design: FilterBankDesign): Choice {
  const short = (name: string) => name.replace(/^typical /, "");
  return {
    key: keyOf(each),
    name: `${each.medium}${each.prefilter === undefined ? "" : ` behind ${short(each.prefilter)}`}, ${each.rack} rack`,
    figures: {
      medium: short(each.medium),
      class: each.efficiencyClass,
      prefilter: each.prefilter === undefined ? "none" : short(each.prefilter),
      rack: each.rack,
      panels: each.panels,
      velocity: each.panelVelocity,
      clean: each.cleanLoss,
      changeOut: each.changeOutLoss,
      life: each.lifeHours,
      power: each.electricPower,
      price: each.priceChange ?? Number.NaN,
      mass: each.massChange,
      broken: each.broken,
    },
    changes: changesTo(each, design),
  };
}

/** The fields that differ from the bank as it is. */
function changesTo({ medium, prefilter, rack }: FoundFilter, design: FilterBankDesign): readonly FieldChange[] {
  const changes: FieldChange[] = [];
  const put = (differs: boolean, field: string, typed: string | undefined) => differs && changes.push({ field, typed });
  put(medium !== design.medium.head.name, "medium", medium);
  put(prefilter !== design.prefilter?.head.name, "prefilter", prefilter);
  put(rack !== design.rack, "rack", rack);
  return changes;
}
