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

/** Slope of the waves in the middle of the published range, 14.5 to 18.5°; records do not tell theirs. */
const waveSlope = Math.tan((16.5 * Math.PI) / 180);
/** Height over pitch of a louver in the middle of the published samples; records do not tell theirs. */
const louverSlope = 0.45;
/** Rows to which both of the following were measured; more stand at six. */
const mostRows = 6;

/**
 * Colburn factor of herringbone (wavy) fins on tubes of 8 to 10 mm by Wang, as a textbook gives it.
 *
 * @param bank record: the finned bank
 * @param reynolds number, 300…8000: with the collar diameter and the narrowest passage
 * @returns factor: Colburn j
 * @outside answers by extrapolation; more than six rows count as six; see `distanceFromRange`
 * @example herringboneColburn({ rows: 4, collarDiameter: 0.0098, transversePitch: 0.0254, longitudinalPitch: 0.022, finPitch: 0.0021,
 *   hydraulicDiameter: 0.0033 }, 2500) // 0.020733 ± 1e-6
 * @source shah-sekulic-2003 §7.5.4.3, small tubes; waves of 16.5°
 */
export function herringboneColburn(bank: FinnedBank, reynolds: number): number {
  const { collarDiameter, hydraulicDiameter, transversePitch, longitudinalPitch, finPitch } = bank;
  const rows = Math.min(mostRows, bank.rows);
  const log = Math.log(reynolds);
  const pitches = longitudinalPitch / transversePitch;
  const byReynolds =
    -0.229 +
    0.115 *
      (finPitch / collarDiameter) ** 0.6 *
      (longitudinalPitch / hydraulicDiameter) ** 0.54 *
      rows ** -0.284 *
      Math.log(0.5 * waveSlope);
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: as it was published
  const byPitch = -0.251 + (0.232 * rows ** 1.37) / (log - 2.303);
  const bySlope = -0.439 * (finPitch / hydraulicDiameter) ** 0.09 * pitches ** -1.75 * rows ** -0.93;
  return (
    0.324 *
    reynolds ** byReynolds *
    (finPitch / longitudinalPitch) ** byPitch *
    waveSlope ** bySlope *
    pitches ** (0.502 * (log - 2.54)) *
    rows ** 0.428
  );
}

/**
 * Fanning friction factor of herringbone (wavy) fins on tubes of 8 to 10 mm by Wang, as a textbook gives it.
 *
 * @param bank record: the finned bank
 * @param reynolds number, 300…8000: with the collar diameter and the narrowest passage
 * @returns factor: Fanning f
 * @outside answers by extrapolation; more than six rows count as six; see `distanceFromRange`
 * @example herringboneFriction({ rows: 4, collarDiameter: 0.0098, transversePitch: 0.0254, longitudinalPitch: 0.022, finPitch: 0.0021,
 *   hydraulicDiameter: 0.0033, outsideArea: 16, bareArea: 1 }, 2500) // 0.111547 ± 1e-6
 * @source shah-sekulic-2003 §7.5.4.3, small tubes; waves of 16.5°
 */
export function herringboneFriction(bank: FinnedBank, reynolds: number): number {
  const { collarDiameter, hydraulicDiameter, transversePitch, longitudinalPitch, finPitch } = bank;
  const rows = Math.min(mostRows, bank.rows);
  const ratio = Math.log(bank.outsideArea / bank.bareArea);
  const alongPitch = finPitch / longitudinalPitch;
  const byReynolds = 0.4604 - 0.01336 * alongPitch ** 0.58 * ratio * waveSlope ** -1.5;
  const bySlope = 3.247 * (finPitch / transversePitch) ** 1.4 * ratio;
  return (
    0.01915 *
    reynolds ** byReynolds *
    waveSlope ** bySlope *
    alongPitch ** (-20.113 / Math.log(reynolds)) *
    ratio ** -5.35 *
    (hydraulicDiameter / collarDiameter) ** 1.3796 *
    rows ** -0.0916
  );
}

/** Reynolds numbers between which the two branches of the louver correlation pass into one another; at 1000 they differ by a fifth. */
const branches = [900, 1100] as const;

/**
 * Colburn factor of louvered (lanced) fins by Wang, Lee and Chang: a branch below Re = 1000 and one above, drawn into one
 * another between 900 and 1100.
 *
 * @param bank record: the finned bank
 * @param reynolds number, 300…8000: with the collar diameter and the narrowest passage
 * @returns factor: Colburn j
 * @outside answers by extrapolation; more than six rows count as six; see `distanceFromRange`
 * @example compactLouverColburn({ rows: 4, collarDiameter: 0.0098, transversePitch: 0.0254, longitudinalPitch: 0.022, finPitch: 0.0021,
 *   hydraulicDiameter: 0.0033 }, 2500) // 0.0202267 ± 1e-6
 * @source wang-lee-chang-1999 louvers 0.45 of their pitch high
 */
export function compactLouverColburn(bank: FinnedBank, reynolds: number): number {
  const [low, high] = branches;
  if (reynolds <= low) return slowLouverColburn(bank, reynolds);
  if (reynolds >= high) return fastLouverColburn(bank, reynolds);
  const share = (reynolds - low) / (high - low);
  return (1 - share) * slowLouverColburn(bank, reynolds) + share * fastLouverColburn(bank, reynolds);
}

function slowLouverColburn(bank: FinnedBank, reynolds: number): number {
  const rows = Math.min(mostRows, bank.rows);
  const pitches = bank.longitudinalPitch / bank.transversePitch;
  return (
    14.3117 *
    reynolds ** (-0.991 - 0.1055 * pitches ** 3.1 * Math.log(louverSlope)) *
    (bank.finPitch / bank.collarDiameter) ** (-0.7344 + (2.1059 * rows ** 0.55) / (Math.log(reynolds) - 3.2)) *
    louverSlope ** (0.08485 * pitches ** -4.4 * rows ** -0.68) *
    (bank.finPitch / bank.longitudinalPitch) ** (-0.1741 * Math.log(rows)) *
    pitches ** -1.724
  );
}

function fastLouverColburn(bank: FinnedBank, reynolds: number): number {
  const rows = Math.min(mostRows, bank.rows);
  const { hydraulicDiameter, longitudinalPitch, finPitch } = bank;
  const pitches = longitudinalPitch / bank.transversePitch;
  const log = Math.log(reynolds);
  const byReynolds =
    -0.6027 + 0.02593 * (longitudinalPitch / hydraulicDiameter) ** 0.52 * rows ** -0.5 * Math.log(louverSlope);
  const bySlope = -0.58655 * (finPitch / hydraulicDiameter) ** 2.3 * pitches ** -1.6 * rows ** -0.65;
  return (
    1.1373 *
    reynolds ** byReynolds *
    (finPitch / longitudinalPitch) ** (-0.4776 + (0.40774 * rows ** 0.7) / (log - 4.4)) *
    louverSlope ** bySlope *
    pitches ** (0.0814 * (log - 3)) *
    rows ** 0.3545
  );
}

/**
 * Fanning friction factor of louvered (lanced) fins by Wang, Lee and Chang: an equation for one row, another for more.
 *
 * @param bank record: the finned bank
 * @param reynolds number, 300…8000: with the collar diameter and the narrowest passage
 * @returns factor: Fanning f
 * @outside answers by extrapolation; more than six rows count as six; see `distanceFromRange`
 * @example compactLouverFriction({ rows: 4, collarDiameter: 0.0098, transversePitch: 0.0254, longitudinalPitch: 0.022, finPitch: 0.0021,
 *   hydraulicDiameter: 0.0033, outsideArea: 16, bareArea: 1 }, 2500) // 0.0820028 ± 1e-6
 * @source wang-lee-chang-1999 louvers 0.45 of their pitch high
 */
export function compactLouverFriction(bank: FinnedBank, reynolds: number): number {
  const { collarDiameter, hydraulicDiameter, transversePitch, longitudinalPitch, finPitch } = bank;
  const rows = Math.min(mostRows, bank.rows);
  const log = Math.log(reynolds);
  const ratio = Math.log(bank.outsideArea / bank.bareArea);
  const pitches = longitudinalPitch / transversePitch;
  const alongPitch = finPitch / longitudinalPitch;
  const acrossPitch = finPitch / transversePitch;
  const diameters = hydraulicDiameter / collarDiameter;
  if (rows === 1) {
    const byReynolds = 0.1691 + 4.4118 * alongPitch ** -0.3 * louverSlope ** -2 * Math.log(pitches) * acrossPitch ** 3;
    return (
      0.00317 *
      reynolds ** byReynolds *
      alongPitch ** (-2.6642 - 14.3809 / log) *
      diameters ** (-0.6816 * Math.log(alongPitch)) *
      louverSlope ** (6.4668 * acrossPitch ** 1.7 * ratio) *
      ratio ** -6.0483
    );
  }
  return (
    0.06393 *
    reynolds ** (0.1395 - 0.0101 * alongPitch ** 0.58 * louverSlope ** -2 * ratio * pitches ** 1.9) *
    (finPitch / collarDiameter) ** (-6.4367 / log) *
    diameters ** (0.07191 * log) *
    louverSlope ** (-2.0585 * acrossPitch ** 1.67 * log) *
    rows ** (0.1036 * Math.log(pitches)) *
    (log - 4) ** -1.093
  );
}
