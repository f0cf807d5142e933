/** Reynolds numbers between which a tube is neither laminar nor turbulent. */
export const laminarUntil = 2300;
export const turbulentFrom = 4000;

/**
 * Nusselt number inside a tube at any Reynolds number: developing laminar flow up to 2300, Gnielinski from 4000, straight
 * between the two so that there is no jump. `startShare` is diameter over length between two starts of the boundary layer:
 * a coil tube starts anew behind each return bend.
 *
 * @param reynolds number, 0…2000000: of the bore
 * @param prandtl number, 0.6…1000: of the liquid
 * @param startShare ratio, 0…0.2: bore over straight length; 0 for a tube without end
 * @returns number: Nusselt number of the bore
 * @outside keeps answering
 * @example tubeNusselt(9622.55, 11.16, 0) // 90.9 ± 1.5
 * @example tubeNusselt(2300, 10, 0.0) // 4.364 ± 0.05
 * @source gnielinski-2013 laminar, transition and turbulent; entrance factor 1 + (d/l)^(2/3)
 */
export function tubeNusselt(reynolds: number, prandtl: number, startShare: number): number {
  if (reynolds >= turbulentFrom) return turbulentNusselt(reynolds, prandtl, startShare);
  if (reynolds <= laminarUntil) return laminarNusselt(reynolds, prandtl, startShare);
  const share = (reynolds - laminarUntil) / (turbulentFrom - laminarUntil);
  const laminar = laminarNusselt(laminarUntil, prandtl, startShare);
  return laminar + share * (turbulentNusselt(turbulentFrom, prandtl, startShare) - laminar);
}

/** Cubes of what holds far from the start, and of what joins it to the start. */
const farAndStart = 4.364 ** 3 + 0.6 ** 3;

/** Uniform heat flux, thermally developing: 4.364 far from the start. */
function laminarNusselt(reynolds: number, prandtl: number, startShare: number): number {
  const start = 1.953 * Math.cbrt(reynolds * prandtl * startShare);
  const beyond = Math.max(0, start - 0.6);
  return Math.cbrt(farAndStart + beyond * beyond * beyond);
}

function turbulentNusselt(reynolds: number, prandtl: number, startShare: number): number {
  const f8 = turbulentFriction(reynolds) / 8;
  const smooth = (f8 * (reynolds - 1000) * prandtl) / (1 + 12.7 * Math.sqrt(f8) * (Math.cbrt(prandtl * prandtl) - 1));
  return smooth * (1 + Math.cbrt(startShare * startShare));
}

/** Petukhov's smooth tube. */
function turbulentFriction(reynolds: number): number {
  const x = 0.79 * Math.log(reynolds) - 1.64;
  return 1 / (x * x);
}

/**
 * Darcy friction factor of a smooth tube at any Reynolds number: 64/Re up to 2300, Petukhov from 4000, straight between.
 *
 * @param reynolds number, 0.001…2000000: of the bore
 * @returns factor: Darcy f
 * @outside keeps answering; Infinity for flow that stands still
 * @example tubeFriction(9622.55) // 0.0318221 ± 1e-6
 * @example tubeFriction(1000) // 0.064
 * @source gnielinski-2013 friction for smooth tubes; laminar by Hagen and Poiseuille
 */
export function tubeFriction(reynolds: number): number {
  if (reynolds >= turbulentFrom) return turbulentFriction(reynolds);
  if (reynolds <= laminarUntil) return 64 / reynolds;
  const share = (reynolds - laminarUntil) / (turbulentFrom - laminarUntil);
  return 64 / laminarUntil + share * (turbulentFriction(turbulentFrom) - 64 / laminarUntil);
}

/**
 * What spring or twisted-tape turbulators do to heat transfer: they keep the flow turbulent where a bare tube would be
 * laminar, and lift it by a fifth where it is turbulent anyway.
 *
 * @param nusselt number, 3…2000: of the bare tube
 * @param reynolds number, 0…2000000: of the bore
 * @param prandtl number, 0.6…1000: of the liquid
 * @returns number: Nusselt number with turbulators
 * @outside keeps answering
 * @example turbulatedNusselt(80, 10000, 10) // 96
 * @source from-memory typical of wire inserts; replace by a maker's test
 */
export function turbulatedNusselt(nusselt: number, reynolds: number, prandtl: number): number {
  return Math.max(1.2 * nusselt, 0.25 * Math.sqrt(reynolds) * Math.cbrt(prandtl));
}

/** How much more friction turbulators cost. */
export const turbulatorFriction = 2.5;
