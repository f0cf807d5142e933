import { steamVapourSpecificVolume, steamVapourViscosity } from "#fluid/steam";
import { tubeFriction } from "./tube-side.ts";

/** The inner tubes of a coil that spread its steam along the tubes around them. */
export interface SteamDistributor {
  readonly tubes: number;
  /** m: length of a tube, bore of the inner one, hole of an orifice. */
  readonly length: number;
  readonly bore: number;
  readonly orificeDiameter: number;
  /** Orifices of one inner tube. */
  readonly orifices: number;
}

/** How steam gets from a coil's connection into its tubes. Owned by the caller. */
export interface SteamDistribution {
  /** m/s where steam enters an inner tube. */
  velocity: number;
  /** Pa of static pressure from the first orifice to the last: friction, less what the slowing steam regains. */
  alongTube: number;
  /** Pa over an orifice, in the mean. */
  orificeDrop: number;
  /** Pa from the connection to the tubes around, in the mean. */
  loss: number;
  /** Share by which the orifice that gets least falls short of the one that gets most. */
  unevenness: number;
}

/** Discharge coefficient of a drilled hole in a thin wall. */
const discharge = 0.62;
/** Velocity heads from the header into an inner tube: entrance half a head, and the head itself. */
const entranceHeads = 1.5;

/**
 * Pressure and evenness along the inner tubes of a steam-distributing coil: steam leaves them evenly through orifices, loses
 * a third of the friction of the whole flow and regains a velocity head as it slows down; orifices throttle it into the tube
 * around. Evenness by the larger of velocity head and change along the tube, against the drop over the orifices.
 *
 * @param distributor record: tubes and orifices
 * @param massFlow kg/s, 0…50: of steam into the coil
 * @param pressure Pa, 1000…1700000: absolute, in the tubes around
 * @param out record: receives velocity, drops and unevenness
 * @outside pressures are held within the range; no flow gives no drop and no unevenness
 * @example (() => { const out = {}; steamDistribution({ tubes: 1, length: 2.4384, bore: 0.01496, orificeDiameter: 0.00238, orifices: 10 },
 *   0.001, 135800, out); return out.orificeDrop; })() // 837 ± 10
 * @source perry-handbook-1997 perforated-pipe distributors, from memory: Δp = (4 f L/(3 D) − 2 K) ρ V²/2, K ½; 5 % uneven at a tenth
 */
export function steamDistribution(
  { tubes, length, bore, orificeDiameter, orifices }: SteamDistributor,
  massFlow: number,
  pressure: number,
  out: SteamDistribution,
): void {
  out.velocity = 0;
  out.alongTube = 0;
  out.orificeDrop = 0;
  out.loss = 0;
  out.unevenness = 0;
  if (!(massFlow > 0)) return;
  const held = Math.min(1.6e6, Math.max(1500, pressure));
  const density = 1 / steamVapourSpecificVolume(held);
  const each = massFlow / tubes;
  const flux = each / ((Math.PI * bore ** 2) / 4);
  const reynolds = (flux * bore) / steamVapourViscosity(held);
  const head = (flux * flux) / (2 * density);
  out.velocity = flux / density;
  out.alongTube = head * ((tubeFriction(reynolds) * length) / (3 * bore) - 1);
  const throughHole = each / (orifices * discharge * ((Math.PI * orificeDiameter ** 2) / 4));
  out.orificeDrop = throughHole ** 2 / (2 * density);
  out.loss = entranceHeads * head + out.alongTube / 2 + out.orificeDrop;
  const swing = Math.max(head, Math.abs(out.alongTube)) / (2 * out.orificeDrop);
  out.unevenness = swing < 1 ? 1 - Math.sqrt((1 - swing) / (1 + swing)) : 1;
}

/**
 * An empty record of a distribution.
 *
 * @returns record: all figures zero
 * @example createSteamDistribution().loss // 0
 * @source definition
 */
export function createSteamDistribution(): SteamDistribution {
  return { velocity: 0, alongTube: 0, orificeDrop: 0, loss: 0, unevenness: 0 };
}
