/** Section of a rail in bending. */
export interface RailSection {
  /** m², m⁴, m³. */
  readonly area: number;
  readonly secondMoment: number;
  readonly modulus: number;
}

/**
 * A channel of even thickness, standing on edge.
 *
 * @param height m, 0.03…1: outside height
 * @param flange m, 0.01…0.3: outside width of a flange
 * @param thickness m, 0.001…0.05: of web and flanges
 * @returns record: area, second moment of area, section modulus
 * @outside the same formula goes on
 * @example channelSection(0.2, 0.075, 0.005).secondMoment * 1e6 // 9.98917 ± 1e-5
 * @source definition rectangle less rectangle
 */
export function channelSection(height: number, flange: number, thickness: number): RailSection {
  const inside = height - 2 * thickness;
  const secondMoment = (flange * height ** 3 - (flange - thickness) * inside ** 3) / 12;
  return {
    area: flange * height - (flange - thickness) * inside,
    secondMoment,
    modulus: secondMoment / (height / 2),
  };
}

/**
 * Moment in the middle of a span under an even load.
 *
 * @param load N/m, 0…1e6: even load
 * @param span m, 0…20: between supports
 * @returns N·m: moment
 * @outside the same formula goes on
 * @example spanMoment(5000, 2) // 2500
 * @source definition simply supported beam
 */
export function spanMoment(load: number, span: number): number {
  return (load * span * span) / 8;
}

/**
 * Deflection in the middle of a span under an even load.
 *
 * @param load N/m, 0…1e6: even load
 * @param span m, 0…20: between supports
 * @param stiffness Pa, 1e9…1e12: Young's modulus
 * @param secondMoment m⁴, 1e-9…1: second moment of area
 * @returns m: deflection
 * @outside the same formula goes on
 * @example spanDeflection(5000, 2, 200e9, 5e-6) * 1000 // 1.0416667 ± 1e-6
 * @source definition simply supported beam
 */
export function spanDeflection(load: number, span: number, stiffness: number, secondMoment: number): number {
  return (5 * load * span ** 4) / (384 * stiffness * secondMoment);
}
