/**
 * Tension of a sling that leans.
 *
 * @param load N, 0…1e7: vertical load on it
 * @param angle degrees, 15…90: from the horizontal
 * @returns N: tension
 * @outside the same formula goes on
 * @example slingTension(10000, 60) // 11547 ± 0.1
 * @source definition vertical part of the tension is the load
 */
export function slingTension(load: number, angle: number): number {
  return load / Math.sin((angle * Math.PI) / 180);
}

/**
 * Sideways pull of a leaning sling, which presses the lifted frame together unless a spreader takes it.
 *
 * @param load N, 0…1e7: vertical load on it
 * @param angle degrees, 15…90: from the horizontal
 * @returns N: horizontal force
 * @outside the same formula goes on
 * @example slingPull(10000, 45) // 10000 ± 1e-6
 * @source definition
 */
export function slingPull(load: number, angle: number): number {
  return load / Math.tan((angle * Math.PI) / 180);
}
