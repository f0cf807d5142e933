/** One figure of a published case beside what the program gives; or a case or figure that could not be run, with the reason. */
export interface Row {
  readonly case: string;
  readonly quantity: string;
  readonly unit: string;
  readonly expected: number | null;
  readonly got: number | null;
  /** Got less expected, in the unit given. */
  readonly error: number | null;
  /** Half-width of what the source vouches for, in the unit given; null when it says nothing. */
  readonly uncertainty: number | null;
  /** Whether the error is no larger than the uncertainty; null without one. */
  readonly within: boolean | null;
  /** Only on what was not run. */
  readonly reason?: string;
  /** What a reader of the case should know, on its first row; printed, no part of the JSON. */
  readonly note?: string;
}

/** What stands in the place of a quantity that was not compared. */
export const notRun = "not run";

/** A figure that was compared. */
export function figureRow(
  caseName: string,
  quantity: string,
  unit: string,
  expected: number,
  got: number,
  uncertainty: number | null,
): Row {
  const error = got - expected;
  const within = uncertainty === null ? null : Math.abs(error) <= uncertainty;
  return { case: caseName, quantity, unit, expected, got, error, uncertainty, within };
}

/** A case, or one figure of it, that could not be compared. */
export function notRunRow(caseName: string, reason: string, quantity = notRun, unit = ""): Row {
  return {
    case: caseName,
    quantity,
    unit,
    expected: null,
    got: null,
    error: null,
    uncertainty: null,
    within: null,
    reason,
  };
}
