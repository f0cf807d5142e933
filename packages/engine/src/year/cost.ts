import { presentWorthFactor, type Tariffs } from "#duty/tariffs";
import type { MeterKey } from "./meter.ts";
import type { MeterTotal } from "./totals.ts";

/** A line of the year's bill. Money in cents of the currency, not rounded; carbon in kg. */
export interface CostLine {
  readonly name: string;
  readonly cost: number;
  readonly carbon: number;
  readonly months: readonly number[];
}

/** The year's bill. */
export interface YearCost {
  readonly currency: string;
  readonly lines: readonly CostLine[];
  readonly cost: number;
  readonly carbon: number;
  /** Cents today for all years of the duty's tariffs, prices growing. */
  readonly presentWorth: number;
  readonly years: number;
}

/** kg/m³ of water, to price masses by volume. */
const waterDensity = 1000;

/** Counts a year by the duty's tariffs. `filterMonths` is the number of filter changes in each month. */
export function yearCost(totals: readonly MeterTotal[], filterMonths: readonly number[], tariffs: Tariffs): YearCost {
  const of = (key: MeterKey) => totals.find((each) => each.key === key);
  const none = Array<number>(12).fill(0);
  const line = (name: string, months: readonly number[], carbon = 0): CostLine => ({
    name,
    months,
    cost: months.reduce((sum, month) => sum + month, 0),
    carbon,
  });
  const priced = (name: string, key: MeterKey, price: number, carbon = 0): CostLine => {
    const total = of(key);
    return line(
      name,
      (total?.months ?? none).map((month) => Math.max(0, month) * price),
      (total?.total ?? 0) * carbon,
    );
  };
  const demand = (of("electricity")?.monthPeaks ?? none).map((peak) => peak * tariffs.electricityDemand);
  const perKilogram = tariffs.water / waterDensity;
  const credit = (of("coilCondensate")?.months ?? none).map(
    (month) => -month * tariffs.condensateReclaimed * perKilogram,
  );
  const steamCarbon = (of("steamHeat")?.total ?? 0) * tariffs.steamCarbon;
  const steam = priced("steam", "steam", tariffs.steam);
  const lines = [
    { ...steam, carbon: steamCarbon },
    priced("heating water", "heatingWater", tariffs.heatingWater, tariffs.heatingWaterCarbon),
    priced("chilled water", "chilledWater", tariffs.chilledWater, tariffs.chilledWaterCarbon),
    priced("electricity", "electricity", tariffs.electricity, tariffs.electricityCarbon),
    line("electric demand", demand),
    priced("water for humidification", "humidifierWater", perKilogram),
    line("condensate put to use", credit),
    line(
      "filters",
      filterMonths.map((count) => count * tariffs.filterSet),
    ),
  ].filter(({ cost, carbon }) => cost !== 0 || carbon !== 0);
  const cost = lines.reduce((sum, each) => sum + each.cost, 0);
  const { years, discountRate, priceGrowth, currency } = tariffs;
  return {
    currency,
    lines,
    cost,
    carbon: lines.reduce((sum, each) => sum + each.carbon, 0),
    presentWorth: cost * presentWorthFactor(discountRate, priceGrowth, years),
    years,
  };
}
