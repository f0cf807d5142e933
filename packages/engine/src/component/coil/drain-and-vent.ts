/** Pipe that vents and drains of coils are made of, schedule 40: bore and outside diameter, m. */
export interface ServicePipe {
  readonly nominal: string;
  readonly bore: number;
  readonly outside: number;
}

const servicePipes: readonly ServicePipe[] = [
  { nominal: "1/2 in", bore: 0.0158, outside: 0.0213 },
  { nominal: "3/4 in", bore: 0.0209, outside: 0.0267 },
  { nominal: "1 in", bore: 0.0266, outside: 0.0334 },
  { nominal: "1-1/4 in", bore: 0.0351, outside: 0.0422 },
  { nominal: "1-1/2 in", bore: 0.0409, outside: 0.0483 },
  { nominal: "2 in", bore: 0.0525, outside: 0.0603 },
];

/** The pipe of every vent, and of a vacuum breaker: the smallest that takes a valve of the trade. */
export const ventPipe: ServicePipe = servicePipes[0]!;

/** s in which a coil has to be empty, so that a person waits for it beside an open drain; common practice, no source. */
const longestDrain = 600;

const gravity = 9.80665;
/** Share of the frictionless outflow that a short pipe with an open valve lets through. */
const discharge = 0.6;

/**
 * Time in which a coil of level tubes, its vent open, runs empty through a pipe at its foot: the level falls as the square
 * of the time that is left.
 *
 * @param volume m³, 0…5: that the coil holds, headers and all
 * @param height m, 0.05…4: of the coil above its drain
 * @param bore m, 0.005…0.2: of the drain
 * @returns s: from full to empty
 * @outside keeps answering; 0 without volume
 * @example drainTime(0.1, 1.2, 0.0209) // 200.3 ± 0.1
 * @source derived-here Torricelli's outflow of a vessel of even section, t = 2V/(C A √(2 g h)), C = 0.6
 */
export function drainTime(volume: number, height: number, bore: number): number {
  const area = (Math.PI * bore * bore) / 4;
  return (2 * volume) / (discharge * area * Math.sqrt(2 * gravity * height));
}

/**
 * The smallest drain that empties a coil within ten minutes.
 *
 * @param volume m³, 0…5: that the coil holds, headers and all
 * @param height m, 0.05…4: of the coil above its drain
 * @returns record: nominal size, bore and outside diameter
 * @outside the largest of the list, 2 in.
 * @example drainFor(0.2, 1.2).nominal // "3/4 in"
 * @source common-practice ten minutes
 */
export function drainFor(volume: number, height: number): ServicePipe {
  return (
    servicePipes.find(({ bore }) => drainTime(volume, height, bore) <= longestDrain) ??
    servicePipes[servicePipes.length - 1]!
  );
}
