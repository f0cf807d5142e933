import {
  COLDEST_SATURATION,
  HOTTEST_SATURATION,
  saturationLogarithmCurvature,
  saturationLogarithmSlope,
  saturationPressureEquation,
} from "./saturation-equation.ts";

/** Numbers per piece of the table: a quintic in the fraction of the degree. */
export const TERMS = 6;

/**
 * The saturation equation as one quintic per degree, −100…200 °C, agreeing with it in value, slope and curvature at
 * every whole degree: no exponential or logarithm in the hot path, and derivatives for nothing. Piece i covers
 * i − 100 … i − 99 °C; the pieces below 0 °C are over ice, the others over liquid.
 */
export const saturationPieces: Float64Array = buildPieces();

function buildPieces(): Float64Array {
  const pieces = new Float64Array((HOTTEST_SATURATION - COLDEST_SATURATION) * TERMS);
  for (let t = COLDEST_SATURATION; t < HOTTEST_SATURATION; t++) {
    const overIce = t < 0;
    const [y0, d0, c0] = endOfPiece(t, overIce);
    const [y1, d1, c1] = endOfPiece(t + 1, overIce);
    const rise = y1 - y0 - d0 - c0 / 2;
    const turn = d1 - d0 - c0;
    const bend = c1 - c0;
    pieces.set(
      [y0, d0, c0 / 2, 10 * rise - 4 * turn + bend / 2, -15 * rise + 7 * turn - bend, 6 * rise - 3 * turn + bend / 2],
      (t - COLDEST_SATURATION) * TERMS,
    );
  }
  return pieces;
}

/** Value, slope and curvature of the saturation pressure at a whole degree; 0 °C belongs to ice or to liquid as asked. */
function endOfPiece(t: number, overIce: boolean): [number, number, number] {
  // The ice curve ends at 0 °C: its limit from below is the value an immeasurable step under it.
  const y = saturationPressureEquation(overIce && t === 0 ? -Number.EPSILON : t);
  const slope = saturationLogarithmSlope(t, overIce);
  return [y, y * slope, y * (slope * slope + saturationLogarithmCurvature(t, overIce))];
}
