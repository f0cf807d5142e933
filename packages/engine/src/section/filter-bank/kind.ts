import { testFinalResistance } from "#component/filter-medium";
import { defineKind, type Note, type WorkingLine } from "../contract.ts";
import { filterSound } from "../passing-sound.ts";
import { type FilterBankDesign, filterBankFields, prepareFilterBank } from "./design.ts";
import { filterBankLosses } from "./losses.ts";
import { filterBankParts } from "./parts.ts";
import { drawFilterBank } from "./picture.ts";
import {
  completeFilterBank,
  createFilterBankRating,
  type FilterBankRating,
  filterLossAt,
  rateFilterBank,
} from "./rate.ts";

const working: readonly WorkingLine<FilterBankDesign, FilterBankRating>[] = [
  {
    figure: "panelVelocity",
    name: "velocity on the panels",
    quantity: "velocity",
    equation: "V = Q (1 − s) / A",
    terms: [
      { symbol: "Q", name: "airflow at its own density", quantity: "actualAirflow", value: (r) => r.actualAirflow },
      { symbol: "s", name: "share beside the panels", quantity: "share", value: (r) => r.bypassShare },
      { symbol: "A", name: "faces of the panels", quantity: "area", value: (_, d) => d.panelArea },
    ],
    evaluate: (r, d) => (r.actualAirflow * (1 - r.bypassShare)) / d.panelArea,
    source: "definition",
  },
  {
    figure: "filterLoss",
    name: "loss of the filters at this loading",
    quantity: "pressureDifference",
    equation: "Δp = Δp₀ (V/V₀)ⁿ (ρ/ρ₀)ⁿ⁻¹ (μ/μ₀)²⁻ⁿ + x (Δp₁ − Δp₀) (V/V₀) (μ/μ₀), prefilter added in the same way",
    terms: [
      {
        symbol: "Δp₀",
        name: "clean at rated velocity",
        quantity: "pressureDifference",
        value: (_, d) => d.medium.cleanResistance,
      },
      {
        symbol: "Δp₁",
        name: "at change-out",
        quantity: "pressureDifference",
        value: (_, d) => d.medium.changeOutResistance,
      },
      { symbol: "V₀", name: "rated velocity", quantity: "velocity", value: (_, d) => d.medium.ratedVelocity },
      { symbol: "n", name: "power of velocity", quantity: "factor", value: (_, d) => d.medium.exponent },
      { symbol: "x", name: "loading", quantity: "factor", value: (r) => r.loading },
      { symbol: "V", name: "velocity on the panels", quantity: "velocity", value: (r) => r.panelVelocity },
      { symbol: "ρ", name: "density", quantity: "density", value: (r) => r.density },
      { symbol: "t", name: "dry bulb, for the viscosity", quantity: "temperature", value: (r) => r.dryBulb },
    ],
    evaluate: (r, d) => filterLossAt(d, r.panelVelocity, r.loading, r.density, r.dryBulb),
    source: "epa-cost-manual-filters drag of medium and dust cake",
  },
  {
    figure: "gapLoss",
    name: "loss of gaps and turns",
    quantity: "pressureDifference",
    equation: "Δp = K ½ ρ V²",
    terms: [
      {
        symbol: "K",
        name: "narrowing, widening and two turns",
        quantity: "factor",
        value: (_, d) => d.gapLossCoefficient,
      },
      { symbol: "ρ", name: "density", quantity: "density", value: (r) => r.density },
      { symbol: "V", name: "velocity in the gaps", quantity: "velocity", value: (r) => r.gapVelocity },
    ],
    evaluate: (r, d) => d.gapLossCoefficient * 0.5 * r.density * r.gapVelocity * r.gapVelocity,
    source: "derived-here from idelchik-handbook contraction and expansion and a mitre loss",
  },
];

/** Filters of standard panel sizes in a flat or angled rack. */
export const filterBank = defineKind({
  name: "filter bank",
  meaning: "Rack of standard filter panels, flat or angled, with or without prefilters",
  fields: filterBankFields,
  prepare: prepareFilterBank,
  createRating: createFilterBankRating,
  rate: rateFilterBank,
  complete: completeFilterBank,
  layout: (design) => ({ length: design.length, outside: 0 }),
  parts: filterBankParts,
  picture: drawFilterBank,
  sound: filterSound,
  losses: filterBankLosses,
  orderBy: ["panelVelocity", "cleanLoss", "changeOutLoss"],
  figures: [
    { figure: "totalPressureLoss", name: "pressure loss", quantity: "pressureDifference" },
    { figure: "cleanLoss", name: "clean at this flow", quantity: "pressureDifference" },
    { figure: "changeOutLoss", name: "at change-out at this flow", quantity: "pressureDifference" },
    { figure: "panelVelocity", name: "velocity on the panels", quantity: "velocity" },
    { figure: "sectionVelocity", name: "velocity in the section", quantity: "velocity" },
    { figure: "gapVelocity", name: "velocity in the gaps", quantity: "velocity" },
    { figure: "mediaVelocity", name: "velocity in the medium", quantity: "velocity" },
    { figure: "gapLoss", name: "loss of gaps and turns", quantity: "pressureDifference" },
    { figure: "bypassShare", name: "share beside the panels", quantity: "share" },
    { figure: "lifeHours", name: "hours from clean to change-out", quantity: "count" },
    { figure: "panelCount", name: "panels", quantity: "count" },
    { figure: "panelArea", name: "face area of the panels", quantity: "area" },
    { figure: "mediaArea", name: "media area of the filters", quantity: "area" },
    { figure: "blankArea", name: "closed with sheet beside the panels", quantity: "area" },
  ],
  working,
  notes: (design, rating) => {
    const notes: Note[] = [];
    const { ratedVelocity, head } = design.medium;
    const { efficiencyClass, cleanResistance, changeOutResistance } = design.medium;
    if (efficiencyClass <= 16 && changeOutResistance < testFinalResistance(efficiencyClass, cleanResistance) - 1) {
      notes.push({
        what: "the filter is changed at less than the final resistance to which its class is tested",
        weight: "information",
        source: "ashrae-52-2",
      });
    }
    const ratio = rating.panelVelocity / ratedVelocity;
    if (ratio > 1.25) {
      const what = `the panels run at ${(100 * ratio).toFixed(0)} % of the velocity at which ${head.name} is rated`;
      notes.push({ what, weight: "caution" });
    }
    if (rating.entering.freeLiquid > 0) {
      notes.push({
        what: "drops, fog or snow reach the filters: their resistance wet is not known",
        weight: "caution",
      });
    }
    if (design.blankArea > 0.15 * design.sectionArea) {
      const share = (100 * design.blankArea) / design.sectionArea;
      notes.push({ what: `${share.toFixed(0)} % of the section is closed beside the panels`, weight: "information" });
    }
    return notes;
  },
});
