import { airViscosity } from "#fluid/air-transport";
import { choice, quantity } from "#form/field";
import { interpolate, monotoneTable, type Table } from "#numerics/interpolate";
import { wireScreenLoss } from "#standard/wire-screen-loss";
import { defineFamily, type RecordHead } from "./family.ts";

/** Woven or welded mesh of round wire: bird screen. */
export interface WireScreen {
  readonly head: RecordHead;
  /** m, wire to wire, centre to centre. */
  readonly meshPitch: number;
  /** m. */
  readonly wireDiameter: number;
  /** Of wires and frame. */
  readonly metal: (typeof screenMetals)[number];
  /** Share of the face that is open, 0…1. */
  readonly openShare: number;
}

/** Metals that screens are made of. */
const screenMetals = ["galvanized steel", "stainless steel 304"] as const;

const fields = {
  meshPitch: quantity("smallLength", {
    meaning: "Mesh, wire centre to wire centre",
    minimum: "3 mm",
    maximum: "50 mm",
  }),
  wireDiameter: quantity("smallLength", { meaning: "Wire diameter", minimum: "0.3 mm", maximum: "6 mm" }),
  metal: choice(screenMetals, { meaning: "Metal of wires and frame", default: "galvanized steel" }),
} as const;

/** The family `wire screen`. */
export const wireScreenFamily = defineFamily({
  name: "wire screen",
  meaning: "Mesh of round wire that keeps birds and leaves out",
  fields,
  build: (values, head): WireScreen => {
    const { meshPitch, wireDiameter, metal } = values;
    const openShare = (1 - wireDiameter / meshPitch) ** 2;
    if (!(openShare >= wireScreenLoss.lowestOpenShare)) {
      throw new RangeError(`wire diameter: leaves ${(100 * openShare).toFixed(0)} % open; at least 5 % is needed`);
    }
    return { head, meshPitch, wireDiameter, metal, openShare };
  },
});

const betaTable: Table = monotoneTable(wireScreenLoss.reynolds, wireScreenLoss.beta);

/**
 * Loss of a wire screen on the approach velocity.
 *
 * @param openShare share, 0.05…0.8: open share of the face
 * @param reynolds factor, 20…400: Reynolds number of the clear mesh opening at the approach velocity
 * @returns factor: total pressure lost over the approach velocity pressure
 * @outside the factor for the Reynolds number holds its end values; open shares above 0.8 follow the same form
 * @example wireScreenLossCoefficient(0.5, 100) // 2.1 ± 1e-9
 * @source blevins-1984 round-edged wire screen
 */
export function wireScreenLossCoefficient(openShare: number, reynolds: number): number {
  const squared = openShare * openShare;
  return (interpolate(betaTable, reynolds) * (1 - squared)) / squared;
}

/**
 * Pressure that a wire screen takes.
 *
 * @param screen record: the screen
 * @param velocity m/s, 0…10: approach velocity
 * @param density kg/m³, 0.7…1.5: density of the air
 * @param dryBulb °C, -60…60: dry-bulb temperature, for the viscosity
 * @param cloggedShare share, 0…0.9: part of the open area that leaves, insects or frost have closed
 * @returns Pa: total pressure lost
 * @outside shares above 0.9 count as 0.9
 * @example wireScreenPressureLoss({ meshPitch: 0.0127, wireDiameter: 0.0016, openShare: 0.764 }, 2.5, 1.2, 20, 0) // 1.389 ± 0.005
 * @source blevins-1984 round-edged wire screen
 */
export function wireScreenPressureLoss(
  screen: Pick<WireScreen, "meshPitch" | "wireDiameter" | "openShare">,
  velocity: number,
  density: number,
  dryBulb: number,
  cloggedShare: number,
): number {
  const openShare = screen.openShare * (1 - Math.min(0.9, Math.max(0, cloggedShare)));
  const reynolds = (density * velocity * (screen.meshPitch - screen.wireDiameter)) / airViscosity(dryBulb);
  return wireScreenLossCoefficient(openShare, reynolds) * 0.5 * density * velocity * velocity;
}
