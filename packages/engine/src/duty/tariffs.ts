import { integer, quantity, text, type ValuesOf } from "#form/field";

/**
 * What energy and water cost and emit. The defaults are round figures of common practice without a source, there to be
 * replaced by the site's own; amounts are in the currency named.
 */
export const tariffFields = {
  currency: text({ meaning: "Currency of every amount, by its code", default: "USD", longest: 3 }),
  electricity: quantity("energyPrice", { meaning: "Electricity", default: "0.12 $/kWh", minimum: "0 $/kWh" }),
  electricityDemand: quantity("powerPrice", {
    meaning: "Electric demand: the highest hour of each month",
    default: "0 $/kW",
    minimum: "0 $/kW",
  }),
  steam: quantity("massPrice", { meaning: "Steam", default: "14 $/klb", minimum: "0 $/klb" }),
  chilledWater: quantity("energyPrice", { meaning: "Chilled water", default: "0.14 $/ton·h", minimum: "0 $/ton·h" }),
  heatingWater: quantity("energyPrice", { meaning: "Heating water", default: "11 $/MMBtu", minimum: "0 $/MMBtu" }),
  water: quantity("volumePrice", {
    meaning: "Water: make-up for steam that goes into the air, and credit for condensate that is reclaimed",
    default: "9 $/kgal",
    minimum: "0 $/kgal",
  }),
  condensateReclaimed: quantity("share", {
    meaning: "Share of the cooling coil's condensate that is put to use",
    default: "0 %",
    minimum: "0 %",
    maximum: "100 %",
  }),
  filterSet: quantity("money", { meaning: "A change of all filters, labour included", default: "$0", minimum: "$0" }),
  electricityCarbon: quantity("energyEmission", {
    meaning: "Emission of electricity",
    default: "0.4 kg/kWh",
    minimum: "0 kg/kWh",
  }),
  steamCarbon: quantity("energyEmission", {
    meaning: "Emission of the heat of steam, losses of the plant included",
    default: "70 kg/GJ",
    minimum: "0 kg/GJ",
  }),
  chilledWaterCarbon: quantity("energyEmission", {
    meaning: "Emission of chilled water, by the heat it takes",
    default: "0.08 kg/kWh",
    minimum: "0 kg/kWh",
  }),
  heatingWaterCarbon: quantity("energyEmission", {
    meaning: "Emission of heating water, by its heat",
    default: "65 kg/GJ",
    minimum: "0 kg/GJ",
  }),
  years: integer({ meaning: "Years over which running costs are counted", default: 15, minimum: 1, maximum: 60 }),
  discountRate: quantity("share", {
    meaning: "Interest by which later money counts less",
    default: "5 %",
    minimum: "0 %",
    maximum: "30 %",
  }),
  priceGrowth: quantity("share", {
    meaning: "Growth of prices in a year",
    default: "2 %",
    minimum: "-10 %",
    maximum: "20 %",
  }),
} as const;

/** Tariffs as read. */
export type Tariffs = ValuesOf<typeof tariffFields>;

/** Present worth of a cost that is paid at the end of every year, over what a first year at today's prices costs. */
export function presentWorthFactor(discountRate: number, priceGrowth: number, years: number): number {
  const step = (1 + priceGrowth) / (1 + discountRate);
  return Math.abs(step - 1) < 1e-12 ? years : (step * (1 - step ** years)) / (1 - step);
}
