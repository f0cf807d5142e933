/** What a person says about a finned tube bank. Metres; fins continuous over all rows. */
export interface FinnedBankShape {
  readonly rows: number;
  /** Tubes in one row, one above the other. */
  readonly tubesPerRow: number;
  /** m, between tube sheets. */
  readonly finnedLength: number;
  /** m, across the flow and along it. */
  readonly transversePitch: number;
  readonly longitudinalPitch: number;
  readonly staggered: boolean;
  readonly tubeOutsideDiameter: number;
  /** m, of the tube wall. */
  readonly tubeWall: number;
  /** m from fin to fin. */
  readonly finPitch: number;
  readonly finThickness: number;
  /** The fins' collars lie on the tube over its whole length, so that the air meets tube plus collar. */
  readonly collars: boolean;
}

/** A finned tube bank with its areas: everything that correlations and the march ask of the geometry. */
export interface FinnedBank extends FinnedBankShape {
  readonly finnedHeight: number;
  readonly tubeInsideDiameter: number;
  /** m, of the round that the air meets: tube, or tube and collar. */
  readonly collarDiameter: number;
  /** m along the flow, of the fins. */
  readonly depth: number;
  readonly faceArea: number;
  /** m², both faces of all fins. */
  readonly finArea: number;
  /** m², of the rounds between the fins. */
  readonly primaryArea: number;
  readonly outsideArea: number;
  /** m², of the rounds if there were no fins. */
  readonly bareArea: number;
  readonly insideArea: number;
  /** m², narrowest passage, and its share of the face. */
  readonly freeFlowArea: number;
  readonly freeFlowShare: number;
  readonly hydraulicDiameter: number;
  /** m, φ·r of Schmidt: `tanh(m L)/(m L)` is the efficiency of the fin. */
  readonly finLength: number;
}

/**
 * Areas of a finned tube bank from its shape. Face area is finned height times finned length; the fins' depth is rows
 * times longitudinal pitch (a casing is deeper, which is why its depth must not be used).
 *
 * @param shape record: what the bank is made of
 * @returns record: the bank with its areas
 * @outside throws
 * @throws RangeError naming what cannot be built
 * @example finnedBank({ rows: 8, tubesPerRow: 16, finnedLength: 0.6096, transversePitch: 0.0381, longitudinalPitch: 0.0329946,
 *   staggered: true, tubeOutsideDiameter: 0.015875, tubeWall: 0.000635, finPitch: 0.0021525, finThickness: 0.0001651,
 *   collars: false }).finArea // 76.8 ± 0.2
 * @source elmahdy-mitalas-1977 areas of the measured 8-row coil, 827 ft² of fins
 */
export function finnedBank(shape: FinnedBankShape): FinnedBank {
  checkShape(shape);
  const { rows, tubesPerRow, finnedLength, transversePitch, longitudinalPitch, staggered } = shape;
  const { tubeOutsideDiameter, tubeWall, finPitch, finThickness, collars } = shape;
  const tubes = rows * tubesPerRow;
  const collarDiameter = tubeOutsideDiameter + (collars ? 2 * finThickness : 0);
  if (!(collarDiameter < Math.min(transversePitch, longitudinalPitch * (staggered ? 1.6 : 1)))) {
    throw new RangeError(
      `tubes of ${collarDiameter} m do not fit pitches of ${transversePitch} × ${longitudinalPitch} m`,
    );
  }
  const tubeInsideDiameter = tubeOutsideDiameter - 2 * tubeWall;
  const finnedHeight = tubesPerRow * transversePitch;
  const depth = rows * longitudinalPitch;
  const faceArea = finnedHeight * finnedLength;
  const openShare = 1 - finThickness / finPitch;
  const holes = (tubes * Math.PI * collarDiameter ** 2) / 4;
  const finArea = 2 * (finnedLength / finPitch) * (finnedHeight * depth - holes);
  const bareArea = Math.PI * collarDiameter * finnedLength * tubes;
  const primaryArea = bareArea * openShare;
  const outsideArea = finArea + primaryArea;
  const freeFlowShare = (1 - collarDiameter / transversePitch) * openShare;
  const freeFlowArea = faceArea * freeFlowShare;
  // Written out: a spread would cost more than all the arithmetic, and thousands are built where coils are chosen.
  return {
    rows,
    tubesPerRow,
    finnedLength,
    transversePitch,
    longitudinalPitch,
    staggered,
    tubeOutsideDiameter,
    tubeWall,
    finPitch,
    finThickness,
    collars,
    finnedHeight,
    tubeInsideDiameter,
    collarDiameter,
    depth,
    faceArea,
    finArea,
    primaryArea,
    outsideArea,
    bareArea,
    insideArea: Math.PI * tubeInsideDiameter * finnedLength * tubes,
    freeFlowArea,
    freeFlowShare,
    hydraulicDiameter: (4 * freeFlowArea * depth) / outsideArea,
    finLength: schmidtFinLength(collarDiameter / 2, transversePitch, longitudinalPitch, staggered),
  };
}

/**
 * φ·r of a continuous plate fin on round tubes, by the circular fin of equal efficiency: `tanh(m L)/(m L)` with this L
 * is the efficiency of the fin.
 *
 * @param radius m, 0.002…0.02: radius at the root of the fin
 * @param transversePitch m, 0.045…0.1: tube pitch across the flow
 * @param longitudinalPitch m, 0.045…0.1: tube pitch along the flow
 * @param staggered flag: rows are set off by half a pitch
 * @returns m: equivalent length of the fin
 * @outside answers for any pitches that leave a fin; never below zero
 * @example schmidtFinLength(0.0079375, 0.0381, 0.0329946, true) // 0.016335 ± 1e-6
 * @source schmidt-1949 staggered 1.27 and 0.3, in line 1.28 and 0.2
 */
export function schmidtFinLength(
  radius: number,
  transversePitch: number,
  longitudinalPitch: number,
  staggered: boolean,
): number {
  const across = transversePitch / 2;
  const diagonal = staggered ? Math.sqrt(across ** 2 + longitudinalPitch ** 2) / 2 : longitudinalPitch / 2;
  const short = staggered ? across : Math.min(across, diagonal);
  const long = staggered ? diagonal : Math.max(across, diagonal);
  const ratio =
    (staggered ? 1.27 : 1.28) * (short / radius) * Math.sqrt(Math.max(0, long / short - (staggered ? 0.3 : 0.2)));
  if (!(ratio > 1)) return 0;
  return radius * (ratio - 1) * (1 + 0.35 * Math.log(ratio));
}

/** Limits of a buildable bank: what, value, low, high. */
function checkShape(shape: FinnedBankShape): void {
  const whole = (name: string, value: number, most: number) => {
    if (!(Number.isInteger(value) && value >= 1 && value <= most)) {
      throw new RangeError(`${name} ${value}: a whole number of 1 to ${most} is wanted`);
    }
  };
  whole("rows", shape.rows, 16);
  whole("tubes per row", shape.tubesPerRow, 400);
  const between = (name: string, value: number, low: number, high: number) => {
    if (!(value >= low && value <= high)) throw new RangeError(`${name} ${value} m: ${low} to ${high} m is wanted`);
  };
  between("finned length", shape.finnedLength, 0.05, 12);
  between("tube outside diameter", shape.tubeOutsideDiameter, 0.004, 0.06);
  between("tube wall", shape.tubeWall, 0.0002, 0.006);
  between("transverse pitch", shape.transversePitch, 0.01, 0.2);
  between("longitudinal pitch", shape.longitudinalPitch, 0.008, 0.2);
  between("fin thickness", shape.finThickness, 0.00005, 0.001);
  between("fin pitch", shape.finPitch, 0.001, 0.02);
  if (!(shape.tubeOutsideDiameter - 2 * shape.tubeWall > 0.002)) {
    throw new RangeError(`a tube of ${shape.tubeOutsideDiameter} m with a wall of ${shape.tubeWall} m has no bore`);
  }
}
