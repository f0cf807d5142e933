import type { FilterBankDesign } from "#section/filter-bank/design";
import type { FilterBankRating } from "#section/filter-bank/rate";
import { conditionRule, type Mend, machineRule, type Rule } from "../contract.ts";
import { fpm, inchesOfWater } from "../inch-pound-limits.ts";
import { coilKinds, firstOfKinds } from "../neighbour.ts";

const larger: readonly Mend[] = [
  { at: "section", field: "rack", way: "other" },
  { at: "casing", field: "height", way: "more" },
  { at: "casing", field: "width", way: "more" },
];
const otherMedium: readonly Mend[] = [{ at: "section", field: "medium", way: "other" }];
const common = { of: ["filter bank"], severity: "shortfall" } as const;

function isAngled({ rack }: FilterBankDesign): boolean {
  return rack === "angled";
}

/** Filters: velocities on panels and section, efficiency, bypass, where they stand. */
export const filterRules: readonly Rule[] = [
  conditionRule<FilterBankDesign, FilterBankRating>({
    ...common,
    id: "filter panel velocity",
    covers: ["FLT-01", "FLT-17"],
    protects: "filters from unloading and high pressure",
    measures: "velocity on the panels' faces",
    quantity: "velocity",
    sense: "at most",
    limit: fpm(500),
    source: "gsa-p100 filters 500 fpm",
    certainty: "read",
    remedy: "more panels: an angled rack, a larger cabinet",
    mends: larger,
    value: ({ record }) => record.panelVelocity,
  }),
  conditionRule<FilterBankDesign, FilterBankRating>({
    ...common,
    id: "angled rack section velocity",
    covers: ["FLT-02", "FLT-17"],
    protects: "even loading of leaning panels",
    measures: "velocity in the section of an angled rack",
    quantity: "velocity",
    sense: "at most",
    limit: fpm(350),
    source: "ventilation-trade-texts angled racks about 350 fpm by the duct's section",
    certainty: "read",
    contested: "300 fpm (a campus), 350 (catalogue practice) by the section, 500 by the panel",
    remedy: "a larger cabinet",
    mends: larger,
    value: ({ design, record }) => (isAngled(design) ? record.sectionVelocity : undefined),
  }),
  machineRule<FilterBankDesign>({
    ...common,
    id: "clean filter resistance",
    covers: ["FLT-03"],
    protects: "the fan's energy",
    measures: "clean resistance at 500 fpm",
    quantity: "pressureDifference",
    sense: "at most",
    limit: ({ design: { medium } }) => {
      if (medium.style === "bag") return inchesOfWater(0.45);
      return inchesOfWater(medium.efficiencyClass >= 13 ? 0.56 : 0.36);
    },
    limitWords: "0.56 in.wg for cartridges and 0.45 for bags of MERV 13 and above, 0.36 for pleated panels",
    source: "ufgs-15895 p. 35",
    certainty: "read",
    isGuide: true,
    remedy: "a filter with more medium",
    mends: otherMedium,
    value: ({ design: { medium } }) => medium.cleanResistance * (fpm(500) / medium.ratedVelocity) ** medium.exponent,
  }),
  machineRule({
    id: "filter before wet surfaces",
    covers: ["FLT-06", "FLT-07"],
    protects: "coils from dirt, and wet dirt from growing",
    measures: "efficiency class of the filters before the first coil",
    quantity: "count",
    sense: "at least",
    limit: 8,
    source: "ashrae-62-1 5.8 MERV 8 before wetted surfaces",
    certainty: "read",
    severity: "damage",
    remedy: "filters of MERV 8 or better before the first coil",
    mends: [{ at: { kind: "filter bank" }, field: "medium", way: "other" }],
    of: "unit",
    value: ({ unit }) => {
      const coil = firstOfKinds(unit, coilKinds);
      if (coil < 0) return undefined;
      const before = unit.sections.filter(({ kind }, index) => kind === "filter bank" && index < coil);
      return Math.max(0, ...before.map(({ design }) => (design as FilterBankDesign).medium.efficiencyClass));
    },
  }),
  machineRule({
    id: "laboratory filter efficiency",
    covers: ["FLT-08"],
    protects: "laboratories and animals from dust",
    measures: "best efficiency class in the unit",
    quantity: "count",
    sense: "at least",
    limit: 11,
    source:
      "va-research-manual 50 to 60 % behind a 30 % prefilter for laboratories, 90 to 95 % for animals; as MERV 11 and 14 from-memory",
    certainty: "from memory",
    severity: "shortfall",
    remedy: "a better filter",
    mends: [{ at: { kind: "filter bank" }, field: "medium", way: "other" }],
    of: "unit",
    value: ({ unit }) =>
      Math.max(
        0,
        ...unit.sections
          .filter(({ kind }) => kind === "filter bank")
          .map(({ design }) => (design as FilterBankDesign).medium.efficiencyClass),
      ),
  }),
  machineRule<FilterBankDesign>({
    ...common,
    id: "filter medium area",
    covers: ["FLT-09"],
    protects: "filter life",
    measures: "medium for a square metre of section",
    quantity: "factor",
    sense: "at least",
    limit: 10,
    source: "en-13053 at least 10 m² for each m² of section, quoted",
    certainty: "second-hand",
    byDefault: false,
    remedy: "a filter with more medium",
    mends: otherMedium,
    value: ({ design }) => design.mediaArea / design.sectionArea,
  }),
  conditionRule<FilterBankDesign, FilterBankRating>({
    ...common,
    id: "filter bypass",
    covers: ["FLT-11"],
    protects: "coils and rooms from dust beside the panels",
    measures: "share of the flow beside the panels",
    quantity: "share",
    sense: "at most",
    limit: 0.005,
    source: "en-1886 frame bypass 0.5 % for the best filters, quoted; lesser ones may have more",
    certainty: "second-hand",
    isGuide: true,
    remedy: "gaskets and spring fasteners that leave no crack",
    mends: [{ at: "section", field: "crackWidth", way: "less" }],
    value: ({ record }) => record.bypassShare,
  }),
  conditionRule<FilterBankDesign, FilterBankRating>({
    ...common,
    id: "filter behind a wet coil",
    covers: ["FLT-10", "FLT-16"],
    protects: "final filters from carried water",
    measures: "velocity on the wet coil before these filters",
    quantity: "velocity",
    sense: "at most",
    limit: fpm(400),
    source: "wet-filter-case an even 400 fpm or less on the coil",
    certainty: "read",
    severity: "damage",
    remedy: "a larger coil, or a moisture eliminator before the filters",
    mends: [{ at: { kind: "chilled-water coil" }, field: "finnedHeight", way: "more" }],
    value: ({ unit, rating, index }) => {
      for (let place = index - 1; place >= 0; place--) {
        const { kind } = unit.sections[place]!;
        if (kind === "moisture eliminator") return undefined;
        if (kind === "chilled-water coil") return rating.sections[place]!.faceVelocity;
      }
      return undefined;
    },
  }),
];
