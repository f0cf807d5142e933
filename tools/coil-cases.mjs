/** The published coil cases with what the program gives for them, as the pages about them want it. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { projectRoot } from "./run.mjs";

/**
 * @typedef {import("../packages/node/src/reference/row.ts").Row} Row
 * @typedef {{ id: string, type: string, rows: number | null, surface: string, airIn: number | null, liquidIn: number | null,
 *   face: number | null, figures: readonly Row[] }} CoilCase
 */

/** Ends of quantity names by which the runner tells the rival surface and other models' answers apart. */
export const rival = " (Elmahdy-Mitalas surface)";
/** End of quantity names by the independent rival, and by the correlation that the program chooses by itself. */
export const second = " (Gray-Webb surface)";
export const chosen = " (chosen by itself)";

/**
 * @param {(text: string) => readonly Row[]} runCases
 * @param {"cooling" | "heating"} kind
 * @returns {CoilCase[]}
 */
export function coilCases(runCases, kind) {
  const text = readFileSync(join(projectRoot, "reference", "cases", `coil_${kind}_cases.json`), "utf8");
  const rows = runCases(text);
  /** @type {readonly Record<string, any>[]} */
  const cases = JSON.parse(text).cases;
  return cases.map((each) => ({
    id: each.id,
    type: each.type,
    rows: each.geometry?.rows ?? null,
    surface: each.outputs?.surface ?? "",
    airIn: each.inputs?.T_air_in_C ?? null,
    liquidIn: each.inputs?.T_water_in_C ?? each.inputs?.T_fluid_in_C ?? null,
    face: each.inputs?.face_velocity_fpm ?? null,
    figures: rows.filter((row) => row.case === each.id),
  }));
}

/**
 * A figure of a case.
 *
 * @param {CoilCase} coilCase
 * @param {string} quantity
 * @returns {Row & { expected: number, got: number, error: number }}
 */
export function figureOf(coilCase, quantity) {
  const found = coilCase.figures.find((row) => row.quantity === quantity && row.error !== null);
  if (found === undefined) throw new Error(`${coilCase.id} has no ${quantity}`);
  return /** @type {any} */ (found);
}

/**
 * Measured coils with full geometry.
 *
 * @param {readonly CoilCase[]} cases
 */
export function measuredCoils(cases) {
  return cases.filter((each) => each.type === "measured" && each.rows !== null);
}
