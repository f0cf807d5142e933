import { metresPerInch } from "#quantity/inch-pound";
import type { FinnedBank } from "./finned-bank.ts";
import { wangPlainColburn, wangPlainFriction } from "./plain-fin.ts";

/** Where the ratio of wet to dry heat transfer coefficient comes from. */
export const wetHeatModels = ["Wang 2000", "McQuiston 1978", "Elmahdy-Mitalas 1977", "none"] as const;
/** One of them. */
export type WetHeatModel = (typeof wetHeatModels)[number];

/** Where the ratio of wet to dry friction comes from. */
export const wetFrictionModels = ["common practice", "Wang 2000"] as const;
/** One of them. */
export type WetFrictionModel = (typeof wetFrictionModels)[number];

/** A factor is not extrapolated: measured wet surfaces lie between these. */
const leastWetFactor = 0.9;
const mostWetFactor = 1.4;

/**
 * Colburn factor of plain fins that are wet all over, by Wang, Lin and Lee, reduced by its authors with the enthalpy
 * potential. Beyond six rows the six-row value stands.
 *
 * @param bank record: the finned bank
 * @param reynolds number, 300…5500: with the collar diameter and the narrowest passage
 * @returns factor: sensible Colburn j of the wet surface
 * @outside answers by extrapolation
 * @example wangWetColburn({ rows: 4, transversePitch: 0.0381, longitudinalPitch: 0.033, collarDiameter: 0.016205,
 *   finPitch: 0.00254 }, 4835.08) // 0.00970531 ± 1e-7
 * @source wang-lin-lee-2000
 */
export function wangWetColburn(bank: FinnedBank, reynolds: number): number {
  const rows = Math.min(bank.rows, 6);
  const pitch = bank.finPitch / bank.collarDiameter;
  const tubes = bank.longitudinalPitch / bank.transversePitch;
  const power = 0.3745 - 1.554 * pitch ** 0.24 * tubes ** 0.12 * rows ** -0.19;
  return 19.36 * reynolds ** power * pitch ** 1.352 * tubes ** 0.6795 * rows ** -1.291;
}

/**
 * Fanning friction factor of plain fins that are wet all over, by Wang, Lin and Lee.
 *
 * @param bank record: the finned bank
 * @param reynolds number, 300…5500: with the collar diameter and the narrowest passage
 * @param film number, 1…50: film Reynolds number 2Γ/μ of the condensate
 * @returns factor: Fanning f
 * @outside answers by extrapolation
 * @example wangWetFriction({ rows: 4, transversePitch: 0.0381, longitudinalPitch: 0.033, collarDiameter: 0.016205,
 *   finPitch: 0.00254, hydraulicDiameter: 0.0030877345, outsideArea: 17.191348, bareArea: 1 }, 4835.08, 8) // 0.0775296 ± 1e-6
 * @source wang-lin-lee-2000
 */
export function wangWetFriction(bank: FinnedBank, reynolds: number, film: number): number {
  const { finPitch: fp, collarDiameter: dc, hydraulicDiameter: dh, longitudinalPitch: pl } = bank;
  const tubes = pl / bank.transversePitch;
  const ratio = bank.outsideArea / bank.bareArea;
  const f1 = -0.7339 + 7.187 * (fp / pl) ** 2.5 * Math.log(9 * film);
  const f2 = -0.5417 * Math.log(ratio) * (fp / dc) ** 0.9;
  const f3 = 0.02722 * Math.log(6 * film) * tubes ** 3.2 * Math.log(reynolds);
  const f4 = 0.2973 * Math.log(ratio) * Math.log(dh / dc);
  const shape = ratio ** f3 * tubes ** f4 * (fp / dh) ** -0.5827 * Math.exp((-1.117 * dh) / dc);
  return 16.55 * reynolds ** f1 * (10 * film) ** f2 * shape;
}

/**
 * Ratio of the heat transfer coefficient of a wet surface to that of the same surface dry (film roughness and waves,
 * bridges of water), kept within 0.9…1.4, the spread of measured surfaces.
 *
 * @param model choice: whose measurements
 * @param bank record: the finned bank
 * @param reynolds number, 300…10000: with the collar diameter and the narrowest passage
 * @returns factor: wet over dry
 * @outside the Reynolds number is held at 300 from below; the factor at 0.9 and 1.4
 * @example wetSurfaceFactor("Wang 2000", { rows: 4, transversePitch: 0.0381, longitudinalPitch: 0.033,
 *   collarDiameter: 0.016205, finPitch: 0.00254, hydraulicDiameter: 0.0030877345 }, 4835.08) // 1.222 ± 1e-3
 * @source wang-lin-lee-2000 over wang-chi-chang-2000; mcquiston-1978; elmahdy-mitalas-1977 as printed in nbsir-84-2996
 */
export function wetSurfaceFactor(model: WetHeatModel, bank: FinnedBank, reynolds: number): number {
  const held = Math.max(reynolds, 300);
  let factor = 1;
  if (model === "Wang 2000") factor = wangWetColburn(bank, held) / wangPlainColburn(bank, held);
  if (model === "McQuiston 1978") {
    const gap = (held * (bank.finPitch - bank.finThickness)) / bank.collarDiameter;
    factor = 0.95 + 4e-5 * gap ** 1.25;
  }
  if (model === "Elmahdy-Mitalas 1977") {
    const hydraulic = Math.min(1500, Math.max(400, (held * bank.hydraulicDiameter) / bank.collarDiameter));
    factor = 1.425 - 5.1e-4 * hydraulic + 2.63e-7 * hydraulic ** 2;
  }
  return Math.min(mostWetFactor, Math.max(leastWetFactor, factor));
}

/**
 * Ratio of air-side friction wet to dry. Common practice: 1.3 at 6 fins per inch and less, 1.45 at 10, 1.8 at 14 and
 * more. The correlation of Wang, Lin and Lee gives 1.6…3 and is the rival.
 *
 * @param model choice: whose figures
 * @param bank record: the finned bank
 * @param reynolds number, 300…10000: with the collar diameter and the narrowest passage
 * @returns factor: wet over dry
 * @outside held at the ends
 * @example wetFrictionRatio("common practice", { finPitch: 0.00254 }, 4000) // 1.45 ± 1e-12
 * @source common-practice wet coils 1.3…1.5 to 10 fins per inch, 1.5…2.0 at 12…14; wang-lin-lee-2000
 */
export function wetFrictionRatio(model: WetFrictionModel, bank: FinnedBank, reynolds: number): number {
  if (model === "Wang 2000") {
    const held = Math.max(reynolds, 300);
    return Math.min(3, Math.max(1, wangWetFriction(bank, held, 8) / wangPlainFriction(bank, held)));
  }
  const perInch = metresPerInch / bank.finPitch;
  if (perInch <= 10) return 1.3 + (0.15 * Math.max(0, perInch - 6)) / 4;
  return 1.45 + (0.35 * Math.min(4, perInch - 10)) / 4;
}
