/** A tested point of a fan and what it was tested at. */
export interface FanPoint {
  /** m³/s, actual. */
  readonly flow: number;
  /** Pa. */
  readonly pressure: number;
  /** W at the shaft. */
  readonly power: number;
}

/** What the laws of the fan scale by. */
export interface FanState {
  /** m. */
  readonly diameter: number;
  /** rev/s. */
  readonly speed: number;
  /** kg/m³. */
  readonly density: number;
}

/**
 * The point that a fan of the same shape reaches at another size, speed and density, by the fan laws.
 *
 * @param point record: flow m³/s, pressure Pa, power W
 * @param from record: diameter m, speed rev/s, density kg/m³ at which the point holds
 * @param to record: those wanted
 * @returns record: the point there
 * @outside efficiency is taken as unchanged: a much smaller wheel does worse than this says
 * @example scaleFanPoint({flow: 5, pressure: 1000, power: 7000}, {diameter: 0.8, speed: 20, density: 1.2}, {diameter: 0.8, speed: 1000 / 60, density: 0.95}).power // 3207 ± 0.5
 * @source derived-here similarity
 */
export function scaleFanPoint(point: FanPoint, from: FanState, to: FanState): FanPoint {
  const size = to.diameter / from.diameter;
  const speed = to.speed / from.speed;
  const density = to.density / from.density;
  return {
    flow: point.flow * speed * size ** 3,
    pressure: point.pressure * density * (speed * size) ** 2,
    power: point.power * density * speed ** 3 * size ** 5,
  };
}
