import type { FinnedBank } from "./finned-bank.ts";

/**
 * Colburn factor of wavy (herringbone) fins by Wang and others.
 *
 * @param bank record: the finned bank
 * @param reynolds number, 400…8000: with the collar diameter and the narrowest passage
 * @returns factor: Colburn j
 * @outside answers by extrapolation; see `distanceFromRange`
 * @example wangWavyColburn({ freeFlowShare: 0.53859167 }, 4725.61) // 0.0143078 ± 1e-6
 * @source wang-1997-wavy
 */
export function wangWavyColburn(bank: FinnedBank, reynolds: number): number {
  return 1.201 / Math.log(reynolds ** bank.freeFlowShare) ** 2.921;
}

/**
 * Fanning friction factor of wavy (herringbone) fins by Wang and others.
 *
 * @param bank record: the finned bank
 * @param reynolds number, 400…8000: with the collar diameter and the narrowest passage
 * @returns factor: Fanning f
 * @outside answers by extrapolation; see `distanceFromRange`
 * @example wangWavyFriction({ rows: 8, outsideArea: 20.655564, bareArea: 1 }, 4725.61) // 0.0544296 ± 1e-6
 * @source wang-1997-wavy
 */
export function wangWavyFriction(bank: FinnedBank, reynolds: number): number {
  const ratio = bank.outsideArea / bank.bareArea;
  return (16.67 / Math.log(reynolds) ** 2.64) * ratio ** -0.096 * bank.rows ** 0.098;
}

/**
 * Colburn factor of convex-louvered (lanced) fins by Wang, Tsai and Lu.
 *
 * @param bank record: the finned bank
 * @param reynolds number, 300…8000: with the collar diameter and the narrowest passage
 * @returns factor: Colburn j
 * @outside answers by extrapolation; see `distanceFromRange`
 * @example wangLouverColburn({ rows: 8, collarDiameter: 0.015875, finPitch: 0.0021525424, outsideArea: 20.655564,
 *   bareArea: 1 }, 4725.61) // 0.0149733 ± 1e-6
 * @source wang-1998-louver
 */
export function wangLouverColburn(bank: FinnedBank, reynolds: number): number {
  const pitch = bank.finPitch / bank.collarDiameter;
  const ratio = bank.outsideArea / bank.bareArea;
  return 16.06 * reynolds ** (-1.02 * pitch - 0.256) * ratio ** -0.601 * bank.rows ** -0.069 * pitch ** 0.84;
}

/**
 * Fanning friction factor of convex-louvered (lanced) fins by Wang, Tsai and Lu, their branch of Re ≥ 1000.
 *
 * @param bank record: the finned bank
 * @param reynolds number, 1000…8000: with the collar diameter and the narrowest passage
 * @returns factor: Fanning f
 * @outside answers by extrapolation; see `distanceFromRange`
 * @example wangLouverFriction({ collarDiameter: 0.015875, finPitch: 0.0021525424, outsideArea: 20.655564, bareArea: 1 },
 *   4725.61) // 0.05394 ± 1e-6
 * @source wang-1998-louver
 */
export function wangLouverFriction(bank: FinnedBank, reynolds: number): number {
  const pitch = bank.finPitch / bank.collarDiameter;
  const ratio = bank.outsideArea / bank.bareArea;
  return 0.768 * (0.0494 + 0.142 * Math.exp(-reynolds / 1180)) * ratio ** 0.0195 * pitch ** -0.121;
}
