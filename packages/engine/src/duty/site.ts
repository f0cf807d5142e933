import { choice, type GroupCheck, group, quantity } from "#form/field";

const distance = (meaning: string) =>
  quantity("length", { meaning, optional: true, minimum: "0 ft", maximum: "5000 ft" });

/** Where the unit stands. */
export const siteFields = {
  altitude: quantity("length", {
    meaning: "Height of the site above sea level; the standard atmosphere gives the barometric pressure",
    optional: true,
    minimum: "-1500 ft",
    maximum: "15000 ft",
  }),
  barometricPressure: quantity("absolutePressure", {
    meaning: "Barometric pressure at the site, where it is known better than from the altitude",
    optional: true,
    minimum: "50 kPa",
    maximum: "110 kPa",
  }),
  placement: choice(["roof", "ground", "indoor"], { meaning: "Where the unit stands", default: "roof" }),
  indoorDryBulb: quantity("temperature", {
    meaning: "Air around an indoor unit",
    default: "75 °F",
    minimum: "-40 °F",
    maximum: "140 °F",
  }),
  indoorRelativeHumidity: quantity("share", { meaning: "Air around an indoor unit", default: "50 %" }),
  windSpeed: quantity("velocity", {
    meaning: "Wind onto the intake on a winter day when the fan stands still",
    default: "15 mph",
    minimum: "0 mph",
    maximum: "120 mph",
  }),
  snow: choice(["none", "light", "heavy", "drifting"], {
    meaning: "Snow that the intake has to keep out",
    default: "light",
  }),
  rainRate: quantity("velocity", {
    meaning: "Rain that falls on the intake in a storm, depth by time",
    default: "4 in/h",
    minimum: "0 in/h",
    maximum: "12 in/h",
  }),
  intakeDistances: group(
    {
      exhaust: distance("To the nearest exhaust, relief or plumbing vent"),
      coolingTower: distance("To cooling towers and stacks"),
      traffic: distance("To truck docks and busy roads"),
      lotLine: distance("To the lot line or a hazardous source, across"),
      surfaceBelow: distance("Down to the roof or ground below it, the snow expected counted"),
      grade: distance("Up from the ground that people can reach"),
    },
    { meaning: "From the intake to what it must keep away from; what is left out cannot be judged" },
  ),
  corrosionClass: choice(["C1", "C2", "C3", "C4", "C5"], {
    meaning: "Corrosivity of the air by ISO 12944, from C1 (dry indoors) to C5 (sea coast, industry)",
    default: "C3",
  }),
} as const;

const checkSite: GroupCheck = (values, say) => {
  if (values.altitude === undefined && values.barometricPressure === undefined) {
    say(
      undefined,
      "neither altitude nor barometric pressure is given",
      "give `altitude` (with ft or m) or `barometric pressure`",
    );
  }
};

/** The site as a field of the duty. */
export const siteField = group(siteFields, { meaning: "Where the unit stands", check: checkSite });
