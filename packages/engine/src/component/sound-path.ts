import { octaveBands } from "#standard/fan-sound";
import { panelTransmissionLoss, squareTurnLoss, wallAbsorption } from "#standard/sound-path";
import { octaveBandOf } from "./fan-sound.ts";

/**
 * Sound that a lined chamber with one way in and one way out takes off: what reaches the way out directly, and what
 * the walls throw back to it. At low frequencies, where the chamber is not large against the wave, it promises too much
 * or too little by several dB.
 *
 * @param outletArea m², 0.01…10: of the way out
 * @param surface m², 0.1…1000: inside surface of the chamber
 * @param absorption share, 0.01…1: mean absorption of that surface
 * @param distance m, 0.1…30: from the middle of the way in to the middle of the way out
 * @param angle degrees, 0…90: between the axis of the way in and the line to the way out
 * @returns dB: loss, never below 0
 * @outside the formula goes on, never below 0
 * @example chamberSoundLoss(0.3, 16, 0.65, 2, 45) // 17.3 ± 0.05
 * @source wells-1958 as in chamber-attenuation-page
 */
export function chamberSoundLoss(
  outletArea: number,
  surface: number,
  absorption: number,
  distance: number,
  angle: number,
): number {
  const direct = Math.cos((angle * Math.PI) / 180) / (2 * Math.PI * distance * distance);
  const thrownBack = (1 - absorption) / (absorption * surface);
  return Math.max(0, -10 * Math.log10(outletArea * (direct + thrownBack)));
}

/**
 * Sound that an unlined turn of a right angle takes off: steps by frequency times width.
 *
 * @param width m, 0.05…5: of the turn in its plane
 * @param frequency Hz, 31…16000: middle of the band
 * @returns dB: loss
 * @outside the first or last step
 * @example squareTurnSoundLoss(1, 250) // 8
 * @source long-architectural-acoustics table 14.5, unlined square elbows without vanes
 */
export function squareTurnSoundLoss(width: number, frequency: number): number {
  const product = width * frequency;
  return squareTurnLoss.steps.find((step) => product < step.below)?.decibels ?? 3;
}

/**
 * Absorption of the inside of a casing's walls in an octave band.
 *
 * @param lining choice: solid or perforated inner skin
 * @param thickness m, 0.02…0.16: of the panel
 * @param frequency Hz, 31…16000: middle of the band
 * @returns share: random-incidence absorption
 * @outside thicknesses beyond the table count as its ends
 * @example wallSoundAbsorption("perforated", 0.0762, 125) // 0.53 ± 1e-9
 * @source ashrae-applications-noise-vibration plenum linings, from memory
 */
export function wallSoundAbsorption(lining: "solid" | "perforated", thickness: number, frequency: number): number {
  const band = octaveBandOf(frequency);
  if (lining === "solid") return wallAbsorption.solid[band]!;
  const rows = wallAbsorption.perforated;
  const above = rows.findIndex((row) => row.thickness >= thickness - 1e-9);
  if (above === 0) return rows[0]!.share[band]!;
  if (above === -1) return rows.at(-1)!.share[band]!;
  const [low, high] = [rows[above - 1]!, rows[above]!];
  const part = (thickness - low.thickness) / (high.thickness - low.thickness);
  return low.share[band]! + part * (high.share[band]! - low.share[band]!);
}

/**
 * Sound that a closed double-wall panel keeps back in an octave band, without its doors, seams and holes.
 *
 * @param thickness m, 0.0254…0.16: of the panel
 * @param frequency Hz, 31…16000: middle of the band
 * @returns dB: transmission loss
 * @outside above 0.1 m as at 0.1 m; thinner panels follow the logarithm of thickness, never below 5 dB
 * @example panelSoundLoss(0.0508, 1000) // 38
 * @source from-memory of printed figures for such panels
 */
export function panelSoundLoss(thickness: number, frequency: number): number {
  const band = octaveBandOf(frequency);
  const { thin, thick } = panelTransmissionLoss;
  const part = Math.log(thickness / thin.thickness) / Math.log(thick.thickness / thin.thickness);
  const loss = thin.decibels[band]! + Math.min(part, 1) * (thick.decibels[band]! - thin.decibels[band]!);
  return Math.max(loss, 5);
}

/**
 * Sound power that leaves through walls, over the sound power let into the space behind them: what comes in is divided
 * among the airway's opening, what the walls take up and what they let through.
 *
 * @param wallArea m², 0…500: of the walls that radiate
 * @param openArea m², 0.05…50: of the airway, by which sound leaves as well
 * @param absorption share, 0…1: of the walls' inside
 * @param loss dB, 0…80: transmission loss of the walls
 * @returns dB: level outside less level inside, below 0
 * @outside the formula goes on; no wall gives minus infinity
 * @example wallRadiation(40, 4, 0, 30) // -20.04 ± 0.01
 * @source derived-here energy balance of a diffuse field; without absorption the handbook's breakout, 10 log(S/A) − TL
 */
export function wallRadiation(wallArea: number, openArea: number, absorption: number, loss: number): number {
  const through = wallArea * 10 ** (-loss / 10);
  return 10 * Math.log10(through / (openArea + wallArea * absorption + through));
}

/**
 * The same figure in every octave band from a function of frequency.
 *
 * @param value function: of the frequency in Hz
 * @returns list: eight figures, 63 … 8000 Hz
 * @outside whatever the function gives
 * @example inOctaveBands((frequency) => frequency / 1000)[4] // 1
 * @source definition
 */
export function inOctaveBands(value: (frequency: number) => number): readonly number[] {
  return octaveBands.map(value);
}
