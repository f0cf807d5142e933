import { metresPerInch } from "#quantity/inch-pound";

/** Fin pitch at which the limit steps, 10 fins per inch, and both limits: 550 and 500 fpm. */
const finsOfStep = 10 / metresPerInch;
const openFins = 550 * 0.00508;
const closeFins = 500 * 0.00508;

/**
 * Face velocity at which a wet coil begins to throw water, judged on the local peak. Stated for plain and wavy aluminium
 * fins; a hydrophilic coating drains better and an epoxy coating worse, by a tenth each.
 *
 * @param finsPerLength 1/m, 100…800: fins per metre
 * @param finMaterial text: as in `finMaterials`
 * @returns m/s: face velocity at the coil's own density
 * @outside steps at 10 fins per inch, flat elsewhere
 * @example carryOverVelocity(12 / 0.0254, "aluminium") // 2.54
 * @example carryOverVelocity(10 / 0.0254, "aluminium") // 2.794
 * @source coil-guide-carry-over 550 fpm to 10 fins per inch, 500 above; the effect of coatings from-memory
 */
export function carryOverVelocity(finsPerLength: number, finMaterial: string): number {
  const limit = finsPerLength <= finsOfStep * 1.0001 ? openFins : closeFins;
  if (finMaterial.startsWith("hydrophilic")) return 1.1 * limit;
  if (finMaterial.startsWith("epoxy")) return 0.9 * limit;
  return limit;
}
