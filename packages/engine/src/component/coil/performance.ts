import type { Liquid } from "#fluid/liquid";
import { type AirStream, airStream } from "#fluid/mixing";

/** What enters a coil. Owned by the caller, changed in place from one solution to the next. */
export interface CoilInlet {
  /** kg/s of dry air over the whole face. */
  dryAirFlow: number;
  dryBulb: number;
  humidityRatio: number;
  /** Pa absolute. */
  pressure: number;
  /** °C, coldest filament of the entering air. */
  coldestFilament: number;
  liquid: Liquid;
  /** kg/s. */
  liquidFlow: number;
  liquidTemperature: number;
}

/** What a coil does with it. Heat counts from air to liquid: positive cools the air. Owned by the caller. */
export interface CoilPerformance {
  /** W into the liquid. */
  heat: number;
  /** W, of the air's dry-bulb change. */
  sensibleHeat: number;
  /** kg/s, and W of enthalpy that it carries away. */
  condensate: number;
  condensateEnthalpy: number;
  leavingDryBulb: number;
  leavingHumidityRatio: number;
  leavingFilament: number;
  leavingLiquid: number;
  /** Reynolds number of the air with collar diameter and narrowest passage. */
  airReynolds: number;
  /** W/m²K of the dry surface, and wet over dry. */
  airCoefficient: number;
  wetFactor: number;
  finEfficiency: number;
  /** Fins and rounds together; the wet one as the mean over the wet rows, the dry one where none is wet. */
  surfaceEfficiency: number;
  wetSurfaceEfficiency: number;
  /** W/m²K inside the tubes, at the mean temperature; Reynolds number and velocity there. */
  tubeCoefficient: number;
  tubeReynolds: number;
  tubeVelocity: number;
  /** Share of the rows on which water condenses, 0…1. */
  wetShare: number;
  /** °C of the coldest inside tube wall, where the coldest filament passes it. */
  coldestTubeWall: number;
  /** °C of the coldest outside surface (root of the fins). */
  coldestSurface: number;
  iterations: number;
  /** False when the march ran out of iterations. */
  converged: boolean;
}

/**
 * An empty record of a coil's performance.
 *
 * @returns record: all figures zero
 * @example createPerformance().heat // 0
 * @source definition
 */
export function createPerformance(): CoilPerformance {
  return {
    heat: 0,
    sensibleHeat: 0,
    condensate: 0,
    condensateEnthalpy: 0,
    leavingDryBulb: 0,
    leavingHumidityRatio: 0,
    leavingFilament: 0,
    leavingLiquid: 0,
    airReynolds: 0,
    airCoefficient: 0,
    wetFactor: 1,
    finEfficiency: 1,
    surfaceEfficiency: 1,
    wetSurfaceEfficiency: 1,
    tubeCoefficient: 0,
    tubeReynolds: 0,
    tubeVelocity: 0,
    wetShare: 0,
    coldestTubeWall: 0,
    coldestSurface: 0,
    iterations: 0,
    converged: true,
  };
}

/** Most rows, and elements and levels of a row grid, that a march holds. */
const mostRows = 16;
const mostElements = 2 * mostRows;

/** Numbers that the march works with; made once and used again, also as the start of the next solution. */
export interface CoilWork {
  /** °C of the liquid at the levels' ends, from inlet to outlet. */
  readonly liquid: Float64Array;
  /** kg/kg of saturated air as cold as that; infinite where the liquid heats. */
  readonly wetness: Float64Array;
  /** °C in the middle of each level, and kg/kg of air saturated there. */
  readonly middle: Float64Array;
  readonly middleWetness: Float64Array;
  /** °C, root of the fins and effective surface of each element; NaN before the first march. */
  readonly root: Float64Array;
  readonly surface: Float64Array;
  /** °C at which saturation was last asked for in an element, root and surface after one another, and kg/kg there. */
  readonly askedAt: Float64Array;
  readonly saturated: Float64Array;
  /** Pa at which that was. */
  saturatedPressure: number;
  /** The two in hand. */
  readonly pair: Float64Array;
  readonly pairSaturated: Float64Array;
  /** W of each element, and whether it is wet (1) or dry (0). */
  readonly heat: Float64Array;
  readonly wet: Float64Array;
  /** Efficiency of each element's surface, as wet or dry as it is. */
  readonly efficiency: Float64Array;
  /** °C and kg/kg behind each row. */
  readonly rowDryBulb: Float64Array;
  readonly rowHumidityRatio: Float64Array;
  /**
   * What the march found last: imbalance of each level (K), the matrix of the correction, and by how much the air before
   * the row in hand, and behind its elements so far, moves with the liquid leaving each level.
   */
  readonly imbalance: Float64Array;
  readonly matrix: Float64Array;
  readonly sensitivity: Float64Array;
  readonly elementSensitivity: Float64Array;
  /** Coefficients that hold for one solution. */
  readonly c: Coefficients;
  /** Air that leaves as fog, before the fog is drained. */
  readonly fog: AirStream;
  /** Result of the element in hand. */
  readonly element: ElementState;
  /** Levels and elements of the coil solved last; a start from there is taken only for the same. */
  levels: number;
  elements: number;
}

/** Coefficients that hold over one solution, and the sums of one march. */
export interface Coefficients {
  /** Parts into which the fine grid divides a tube's length; 1 on the row grid. */
  lanes: number;
  dryAirFlow: number;
  /** W/K of the air before the row in hand. */
  airCapacity: number;
  liquidCapacity: number;
  specificHeat: number;
  airCoefficient: number;
  wetFactor: number;
  /** Transfer units of a row's wet surface if it were all at one temperature, and how near the air comes to it. */
  wetTransfers: number;
  wetSensibleReach: number;
  finEfficiency: number;
  surfaceEfficiency: number;
  airReynolds: number;
  /** W/m²K inside at the inlet temperature, and its change per K. */
  tubeCoefficient: number;
  tubeCoefficientSlope: number;
  heat: number;
  sensibleHeat: number;
  condensate: number;
  condensateEnthalpy: number;
  /** Rows' worth of wet elements, and their surface efficiency summed likewise. */
  wetRows: number;
  wetEfficiency: number;
}

/** One element of the march: what enters, what it does. Numbers that calls hand on stand here, so that none is boxed. */
export interface ElementState {
  dryBulb: number;
  humidityRatio: number;
  /** Pa absolute; °C of the liquid entering, in the element's middle and, as far as known, leaving. */
  pressure: number;
  liquidIn: number;
  liquidMean: number;
  liquidOut: number;
  /** kg/kg of saturated air as cold as the liquid that enters, in the middle, and that leaves; infinite where the liquid heats. */
  wetnessIn: number;
  wetnessMean: number;
  wetnessOut: number;
  /** K/W of one row between liquid and root of the fins. */
  behindRoot: number;
  heat: number;
  /** d heat / d air potential, d heat / d liquid inlet temperature. */
  airSlope: number;
  liquidSlope: number;
  leavingDryBulb: number;
  leavingHumidityRatio: number;
  /** °C at which its condensate leaves. */
  condensateTemperature: number;
  surfaceEfficiency: number;
}

/**
 * Room for the march of any coil.
 *
 * @param slots count, 32…4096: elements to be held; 32 are enough for the row grid
 * @param levels count, 16…400: levels to be held; 16 are enough for the row grid
 * @returns record: caller-owned numbers
 * @outside fewer are too few for a coil of sixteen rows
 * @example createCoilWork().levels // 0
 * @source definition
 */
export function createCoilWork(slots = mostElements, levels = mostRows): CoilWork {
  // One piece of memory for all lists: lists that bring their own take several times as long to make, and a unit solved from
  // nothing makes four such rooms.
  const memory = new Float64Array(levels * levels + 7 * (levels + 1) + 9 * slots + 2 * mostRows + 4);
  let used = 0;
  const list = (count: number): Float64Array => {
    used += count;
    return used > memory.length ? new Float64Array(count) : memory.subarray(used - count, used);
  };
  return {
    liquid: list(levels + 1),
    wetness: list(levels + 1),
    middle: list(levels),
    middleWetness: list(levels),
    root: list(slots),
    surface: list(slots),
    askedAt: list(2 * slots).fill(Number.NaN),
    saturated: list(2 * slots),
    saturatedPressure: Number.NaN,
    pair: list(2),
    pairSaturated: list(2),
    heat: list(slots),
    wet: list(slots),
    efficiency: list(slots),
    rowDryBulb: list(mostRows),
    rowHumidityRatio: list(mostRows),
    imbalance: list(levels + 1),
    matrix: list(levels * levels),
    sensitivity: list(levels + 1),
    elementSensitivity: list(levels + 1),
    c: {
      lanes: 1,
      dryAirFlow: 0,
      airCapacity: 0,
      liquidCapacity: 0,
      specificHeat: 0,
      airCoefficient: 0,
      wetFactor: 1,
      wetTransfers: 0,
      wetSensibleReach: 0,
      finEfficiency: 1,
      surfaceEfficiency: 1,
      airReynolds: 0,
      tubeCoefficient: 0,
      tubeCoefficientSlope: 0,
      heat: 0,
      sensibleHeat: 0,
      condensate: 0,
      condensateEnthalpy: 0,
      wetRows: 0,
      wetEfficiency: 0,
    },
    fog: airStream(0, 0, 0),
    element: {
      dryBulb: 0,
      humidityRatio: 0,
      pressure: 0,
      liquidIn: 0,
      liquidMean: 0,
      liquidOut: 0,
      wetnessIn: 0,
      wetnessMean: 0,
      wetnessOut: 0,
      behindRoot: 0,
      heat: 0,
      airSlope: 0,
      liquidSlope: 0,
      leavingDryBulb: 0,
      leavingHumidityRatio: 0,
      condensateTemperature: 0,
      surfaceEfficiency: 1,
    },
    levels: 0,
    elements: 0,
  };
}
