/**
 * Final resistance to which a filter of an efficiency class is tested, Pa: at least this and at least twice the initial
 * resistance. By the class's number (minimum efficiency reporting value): 1–4, 5–8, 9–12, 13–16.
 */
export const filterFinalResistance = {
  source: "ashrae-52-2",
  certainty: "read second-hand",
  classes: [
    { highest: 4, resistance: 0.3 * 249.08891 },
    { highest: 8, resistance: 0.6 * 249.08891 },
    { highest: 12, resistance: 1.0 * 249.08891 },
    { highest: 16, resistance: 1.4 * 249.08891 },
  ],
  timesInitial: 2,
} as const;
