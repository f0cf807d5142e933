import type { FinnedBank } from "./finned-bank.ts";

/** A correlation's answer from the bank and the Reynolds number of collar diameter and narrowest passage. */
export type SurfaceFunction = (bank: FinnedBank, reynolds: number) => number;

/**
 * Colburn factor of plain fins by Wang, Chi and Chang. Beyond six rows the six-row value stands: the correlation was
 * fitted to 1…6 rows and, used beyond, falls 10–14 % below measured eight-row coils.
 *
 * @param bank record: the finned bank
 * @param reynolds number, 300…20000: with the collar diameter and the narrowest passage
 * @returns factor: Colburn j
 * @outside answers by extrapolation; see `distanceFromRange`
 * @example wangPlainColburn({ rows: 8, transversePitch: 0.0381, longitudinalPitch: 0.0329946, collarDiameter: 0.015875,
 *   finPitch: 0.0021525424, hydraulicDiameter: 0.002628977 }, 4725.61) // 0.00709797 ± 1e-7
 * @source wang-chi-chang-2000 eqs. for N = 1 and N ≥ 2
 */
export function wangPlainColburn(bank: FinnedBank, reynolds: number): number {
  const { transversePitch: pt, longitudinalPitch: pl, collarDiameter: dc, finPitch: fp, hydraulicDiameter: dh } = bank;
  const log = Math.log(reynolds);
  if (bank.rows === 1) {
    return (
      0.108 *
      reynolds ** -0.29 *
      (pt / pl) ** (1.9 - 0.23 * log) *
      (fp / dc) ** -1.084 *
      (fp / dh) ** -0.786 *
      (fp / pt) ** (-0.236 + 0.126 * log)
    );
  }
  const rows = Math.min(bank.rows, 6);
  const p3 = -0.361 - (0.042 * rows) / log + 0.158 * Math.log(rows * (fp / dc) ** 0.41);
  const p4 = -1.224 - (0.076 * (pl / dh) ** 1.42) / log;
  const p5 = -0.083 + (0.058 * rows) / log;
  const p6 = -5.735 + 1.21 * Math.log(reynolds / rows);
  return 0.086 * reynolds ** p3 * rows ** p4 * (fp / dc) ** p5 * (fp / dh) ** p6 * (fp / pt) ** -0.93;
}

/**
 * Fanning friction factor of plain fins by Wang, Chi and Chang, on the narrowest passage.
 *
 * @param bank record: the finned bank
 * @param reynolds number, 300…20000: with the collar diameter and the narrowest passage
 * @returns factor: Fanning f
 * @outside answers by extrapolation; see `distanceFromRange`
 * @example wangPlainFriction({ rows: 8, transversePitch: 0.0381, longitudinalPitch: 0.0329946, collarDiameter: 0.015875,
 *   finPitch: 0.0021525424 }, 4725.61) // 0.0295148 ± 1e-7
 * @source wang-chi-chang-2000 friction
 */
export function wangPlainFriction(bank: FinnedBank, reynolds: number): number {
  const { transversePitch: pt, longitudinalPitch: pl, collarDiameter: dc, finPitch: fp } = bank;
  const log = Math.log(reynolds);
  const f1 = -0.764 + (0.739 * pt) / pl + (0.177 * fp) / dc - 0.00758 / bank.rows;
  return 0.0267 * reynolds ** f1 * (pt / pl) ** (-15.689 + 64.021 / log) * (fp / dc) ** (1.696 - 15.695 / log);
}

/**
 * Colburn factor of plain fins by Gray and Webb; below four rows with their row correction.
 *
 * @param bank record: the finned bank
 * @param reynolds number, 500…24700: with the collar diameter and the narrowest passage
 * @returns factor: Colburn j
 * @outside answers by extrapolation; see `distanceFromRange`
 * @example grayWebbColburn({ rows: 8, transversePitch: 0.0381, longitudinalPitch: 0.0329946, collarDiameter: 0.015875,
 *   finPitch: 0.0021525424, finThickness: 0.0001651 }, 4725.61) // 0.00760999 ± 1e-7
 * @source gray-webb-1986 from memory of the printed equations
 */
export function grayWebbColburn(bank: FinnedBank, reynolds: number): number {
  let lead = grayWebbLeads.get(bank);
  if (lead === undefined) {
    lead = grayWebbLead(bank);
    grayWebbLeads.set(bank, lead);
  }
  return lead * reynolds ** (-0.328 - 0.092 * 0.607 * Math.max(0, 4 - bank.rows));
}

/** What a bank's geometry makes of it, found once: everything but the power of the Reynolds number. */
const grayWebbLeads = new WeakMap<FinnedBank, number>();

function grayWebbLead(bank: FinnedBank): number {
  const { transversePitch: pt, longitudinalPitch: pl, collarDiameter: dc, rows } = bank;
  const gap = bank.finPitch - bank.finThickness;
  const four = 0.14 * (pt / pl) ** -0.502 * (gap / dc) ** 0.0312;
  return rows >= 4 ? four : four * 0.991 * (2.24 * (rows / 4) ** -0.031) ** (0.607 * (4 - rows));
}

/**
 * Colburn factor of plain fins by McQuiston, with his factor for other than four rows; at most eight rows enter it.
 *
 * @param bank record: the finned bank
 * @param reynolds number, 3000…15000: with the collar diameter and the narrowest passage
 * @returns factor: Colburn j
 * @outside below Reynolds numbers where the row factor loses its meaning the four-row value stands
 * @example mcQuistonColburn({ rows: 8, longitudinalPitch: 0.0329946, collarDiameter: 0.015875, outsideArea: 20.655564,
 *   bareArea: 1 }, 4725.61) // 0.00639937 ± 1e-7
 * @source mcquiston-1978 from memory of the printed equations
 */
export function mcQuistonColburn(bank: FinnedBank, reynolds: number): number {
  const four = 0.0014 + 0.2618 * reynolds ** -0.4 * (bank.outsideArea / bank.bareArea) ** -0.15;
  const along = ((reynolds * bank.longitudinalPitch) / bank.collarDiameter) ** -1.2;
  const below = 1 - 5120 * along;
  if (!(below > 0.2)) return four;
  return (four * (1 - 1280 * Math.min(bank.rows, 8) * along)) / below;
}

/**
 * Fanning friction factor of plain fins by McQuiston; its author gives it 35 % either way.
 *
 * @param bank record: the finned bank
 * @param reynolds number, 3000…15000: with the collar diameter and the narrowest passage
 * @returns factor: Fanning f
 * @outside answers by extrapolation; see `distanceFromRange`
 * @example mcQuistonFriction({ collarDiameter: 0.015875, transversePitch: 0.0381, finPitch: 0.00254, finThickness: 0.00016,
 *   outsideArea: 17.19, bareArea: 1 }, 4835) // 0.0259 ± 2e-4
 * @source mcquiston-1978 from memory of the printed equations
 */
export function mcQuistonFriction(bank: FinnedBank, reynolds: number): number {
  const { collarDiameter: d, transversePitch: across, finPitch } = bank;
  const passage = across - d;
  // His D*: the outside over the bare area, over 1 + (pitch − tube)/fin pitch.
  const wide = bank.outsideArea / bank.bareArea / (1 + passage / finPitch);
  const group =
    reynolds ** -0.25 *
    wide ** -0.25 *
    (passage / (4 * (finPitch - bank.finThickness))) ** -0.4 *
    Math.max(0.05, across / (wide * d) - 1) ** -0.5;
  return 0.004904 + 1.382 * group * group;
}

/**
 * Colburn factor of banks of tubes with circular fins, as the research routine for steam coils takes it: falls with the
 * finned over the bare area.
 *
 * @param bank record: the finned bank
 * @param reynolds number, 1000…30000: with the collar diameter and the narrowest passage
 * @returns factor: Colburn j
 * @outside answers by extrapolation; see `distanceFromRange`
 * @example circularFinColburn({ rows: 1, outsideArea: 36.6, bareArea: 1 }, 8867.8) // 0.002570 ± 1e-5
 * @source nbsir-84-2996 steam coil routine, Nu = C Re^0.625 (A/A_bare)^−0.375 Pr^(1/3), C 0.30 in line, 0.45 staggered
 */
export function circularFinColburn(bank: FinnedBank, reynolds: number): number {
  const lead = bank.staggered && bank.rows > 1 ? 0.45 : 0.3;
  return lead * (reynolds * (bank.outsideArea / bank.bareArea)) ** -0.375;
}

/**
 * Colburn factor of plain fins by Elmahdy and Mitalas. Fitted to coils of 5/8-in. tubes on 1.5 × 1.3 in. with 8–14 fins
 * per inch, of four rows and more: among them the very coils of the measured cases.
 *
 * @param bank record: the finned bank
 * @param reynolds number, 1000…12000: with the collar diameter and the narrowest passage (turned into the hydraulic diameter's inside)
 * @returns factor: Colburn j
 * @outside answers by extrapolation; see `distanceFromRange`
 * @example elmahdyMitalasColburn({ transversePitch: 0.0381, longitudinalPitch: 0.0329946, collarDiameter: 0.015875,
 *   finPitch: 0.0021525424, finThickness: 0.0001651, hydraulicDiameter: 0.002628977 }, 4725.61) // 0.00979 ± 2e-5
 * @source elmahdy-mitalas-1977 as printed in nbsir-84-2996
 */
export function elmahdyMitalasColburn(bank: FinnedBank, reynolds: number): number {
  const { finPitch: s, finThickness: t, hydraulicDiameter: dh, collarDiameter: dc } = bank;
  const finDiameter = Math.sqrt((4 * bank.transversePitch * bank.longitudinalPitch) / Math.PI);
  const finHeight = (finDiameter - dc) / 2;
  const c1 = 0.159 * (t / dh) ** -0.065 * (t / finHeight) ** 0.141;
  const c2 = -0.323 * (s / finHeight) ** 0.049 * (finDiameter / bank.longitudinalPitch) ** 0.549 * (t / s) ** -0.028;
  return c1 * ((reynolds * dh) / dc) ** c2;
}
