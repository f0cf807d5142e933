import { createHourLists } from "#year/hour-figures";
import type { YearHours } from "#year/year-hours";
import type { YearReport } from "#year/year-report";

const hours = 8760;

/** Steps of a season and of a day, coarse so that a picture of them has few pieces: 1 in the middle of winter at night. */
const coldness = (hour: number) => {
  const week = Math.floor(hour / 168);
  const half = Math.floor((hour % 24) / 12);
  return Math.cos((2 * Math.PI * week) / 52) + (half === 0 ? 0.2 : -0.2);
};

/** A year that no unit has run through, whose every number is known: heating above 0.2 of coldness, cooling below −0.2. */
export function sampleYearHours(): YearHours {
  const lists = createHourLists(hours);
  const dryBulb = new Float64Array(hours);
  for (let hour = 0; hour < hours; hour++) {
    const cold = coldness(hour);
    dryBulb[hour] = 12 - 22 * cold;
    lists.running[hour] = 1;
    lists.solved[hour] = 1;
    lists.supplyDryBulb[hour] = cold > 0 ? 14.5 : 12.8;
    lists.supplyHumidityRatio[hour] = cold > 0 ? 0.003 : 0.008;
    lists.steamHeat[hour] = Math.max(0, 300_000 * (cold - 0.2));
    lists.chilledWaterHeat[hour] = Math.max(0, 400_000 * (-cold - 0.2));
    lists.fanPower[hour] = hour % 24 < 12 ? 6000 : 15_000;
    lists.freezeMargin[hour] = cold > 1.15 ? -1 : 12 - 10 * cold;
    lists.missed[hour] = cold > 1.18 ? 1 : 0;
  }
  const weather = { dryBulb, origin: "EPW" };
  const plan = {
    hours,
    weather,
    humidityRatio: dryBulb.map((air) => 0.003 + 0.00025 * Math.max(0, air + 5)),
    pressure: new Float64Array(hours).fill(101_325),
  };
  return {
    plan,
    lists,
    coils: [],
    freezeMargins: [],
    misses: [],
    unsolved: [],
    tally: undefined,
  } as unknown as YearHours;
}

/** What that year would be told as, as far as pictures ask. */
export function sampleYearReport({ lists }: YearHours): YearReport {
  const total = (key: string, list: Float64Array, designPeak: number) => {
    const months = Array.from(
      { length: 12 },
      (_, month) => 3600 * list.slice(month * 730, (month + 1) * 730).reduce((sum, value) => sum + value, 0),
    );
    return { key, months, total: months.reduce((sum, value) => sum + value, 0), peak: Math.max(...list), designPeak };
  };
  const line = (name: string, months: readonly number[]) => ({
    name,
    months,
    cost: months.reduce((sum, value) => sum + value, 0),
    carbon: 0,
  });
  const winter = [9, 7, 4, 2, 0, 0, 0, 0, 0, 2, 5, 8].map((value) => value * 20_000);
  const summer = [0, 0, 1, 2, 5, 8, 9, 8, 4, 1, 0, 0].map((value) => value * 15_000);
  const lines = [line("steam", winter), line("chilled water", summer)];
  return {
    isSynthetic: false,
    totals: [
      total("steamHeat", lists.steamHeat, 330_000),
      total("chilledWater", lists.chilledWaterHeat, 390_000),
      total("electricity", lists.fanPower, 15_000),
    ],
    cost: { currency: "USD", lines, cost: lines.reduce((sum, each) => sum + each.cost, 0) },
  } as unknown as YearReport;
}
