import { wattsPerHorsepower } from "#quantity/inch-pound";
import type { PartLoadRow } from "#standard/drive-losses";

/**
 * Power into a machine whose efficiency follows a·x/(b + x) + c·x of its share x of rated output, between published sizes
 * linear in rated power. Written as rated power over a/(b + x) + c, so that it stays finite when idling.
 *
 * @param rows list, rising horsepower: the published coefficients
 * @param ratedPower W, above 0: rated output
 * @param output W, 0 or more: power given
 * @returns W: power taken
 * @outside sizes beyond the table take the coefficients of its end
 * @example inputPowerFromPartLoad([{ horsepower: 10, a: 0.978715, b: 0.022227, c: 0.001941 }], 7457, 7457) // 7773 ± 1
 * @source energyplus-engineering-reference fan component model
 */
export function inputPowerFromPartLoad(rows: readonly PartLoadRow[], ratedPower: number, output: number): number {
  const horsepower = ratedPower / wattsPerHorsepower;
  const share = output / ratedPower;
  let above = 0;
  while (above < rows.length - 1 && rows[above]!.horsepower < horsepower) above++;
  const high = rows[above]!;
  const low = rows[Math.max(above - 1, 0)]!;
  const span = high.horsepower - low.horsepower;
  const weight = span === 0 ? 1 : Math.min(Math.max((horsepower - low.horsepower) / span, 0), 1);
  const perShare = (row: PartLoadRow) => row.a / (row.b + share) + row.c;
  return ratedPower / (perShare(low) + weight * (perShare(high) - perShare(low)));
}
