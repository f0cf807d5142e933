/**
 * What an electrical code commonly asks of a motor's circuit: ratings in which fuses and breakers are made, and the shares
 * of full-load current that size wires, overload protection and short-circuit protection. For a proposal only.
 */
export const motorCircuit = {
  /** A. */
  sizes: [
    15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500,
    600, 700, 800, 1000, 1200, 1600, 2000,
  ],
  /** Of the largest motor's full-load current, for the wires. */
  ampacityShare: 1.25,
  /** Of the largest motor's full-load current, at most, for an inverse-time breaker. */
  breakerShare: 2.5,
  /** Of full-load current, at most, for overload protection: service factor 1.15 or more, and less. */
  overloadShare: { withServiceFactor: 1.25, without: 1.15 },
  source: "nfpa-70",
  certainty: "from memory",
} as const;
