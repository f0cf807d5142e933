import { humidityRatioOfAirState } from "#duty/air-state";
import type { Duty } from "#duty/duty";
import { conditionOfDay, designDays, sitePressure } from "#duty/standard-conditions";
import { saturationHumidityRatio } from "#fluid/saturation";
import { steamSaturationTemperature } from "#fluid/steam";
import { printQuantity } from "#quantity/print";
import { inBothUnits } from "#section/both-units";

/** Something that a duty asks and no machine can do, in words, and the nearest duty that works. */
export interface Contradiction {
  readonly words: string;
  /** Ways out, the nearest first, each alone. */
  readonly nearest: readonly Way[];
  /** Why no way out is told, where none was found. */
  readonly why?: string;
}

/** A change of the job file, `duty.setPoints.coilLeaving` to `52 °F`, and what must change with it. */
export interface Way {
  readonly path: string;
  readonly value: string;
  readonly words: string;
  readonly also?: readonly { readonly path: string; readonly value: string }[];
}

/** K that a coil of any size leaves between air and the water that enters it, and that a usual one does; common practice. */
const coilApproach = 1;
const usualApproach = 2.5;

/** °C: the warmest air that a duty may ask behind the cooling coil. */
const warmestLeaving = 32;

/** What a duty asks that contradicts itself, before anything is sized. */
export function contradictionsOf(duty: Duty): readonly Contradiction[] {
  return [
    ...coolingContradictions(duty),
    ...dewPointContradictions(duty),
    ...heatingContradictions(duty),
    ...returnContradictions(duty),
  ];
}

/** °C of the coldest air that the duty wants in summer. */
function coldestWanted(duty: Duty): number {
  const { coilLeaving, supply } = duty.setPoints;
  return Math.min(coilLeaving ?? Number.POSITIVE_INFINITY, supply ?? Number.POSITIVE_INFINITY);
}

function coolingContradictions(duty: Duty): readonly Contradiction[] {
  const wanted = coldestWanted(duty);
  const water = duty.utilities.chilledWater;
  const path = wanted === duty.setPoints.coilLeaving ? "duty.setPoints.coilLeaving" : "duty.setPoints.supply";
  const hottest = Math.max(
    ...designDays(duty)
      .slice(0, 3)
      .map((day) => day.outdoor.dryBulb),
  );
  if (water === undefined) {
    if (wanted >= hottest) return [];
    return [
      {
        words: `the air is to leave at ${inBothUnits(wanted, "temperature")} in summer, and there is no chilled water to cool it`,
        nearest: [
          group("give chilled water", "duty.utilities.chilledWater", { supply: "44 °F", rise: "12 F°" }),
          ...(hottest > warmestLeaving
            ? []
            : [{ path, value: typed(hottest), words: "let the air leave as warm as outdoors" }]),
        ],
      },
    ];
  }
  if (wanted >= water.supply + coilApproach) return [];
  const words =
    wanted <= water.supply
      ? `the air is to leave at ${inBothUnits(wanted, "temperature")}, and the water that cools it arrives at ${inBothUnits(water.supply, "temperature")}`
      : `the air is to leave within ${inBothUnits(wanted - water.supply, "temperatureDifference")} of the chilled water's supply, nearer than coils that are built come`;
  return [
    {
      words,
      nearest: [
        { path: "duty.utilities.chilledWater.supply", value: typed(wanted - usualApproach), words: "colder water" },
        { path, value: typed(water.supply + usualApproach), words: "warmer leaving air" },
      ],
    },
  ];
}

function dewPointContradictions(duty: Duty): readonly Contradiction[] {
  const { maximumDewPoint, coilLeaving, supply, winterMinimumDewPoint, winterSupply } = duty.setPoints;
  const found: Contradiction[] = [];
  const coil = coilLeaving ?? supply;
  const wettest = designDays(duty)[2]!.outdoor;
  const pressure = sitePressure(duty);
  const isHumid =
    maximumDewPoint !== undefined &&
    humidityRatioOfAirState(wettest, pressure) > saturationHumidityRatio(maximumDewPoint, pressure);
  // Air leaves a deep wet coil within a degree or so of saturation.
  if (isHumid && coil !== undefined && coil > maximumDewPoint + 1.5) {
    found.push({
      words: `air that leaves the coil at ${inBothUnits(coil, "temperature")} is nearly saturated there and cannot have a dew point of ${inBothUnits(maximumDewPoint, "temperature")} at most`,
      nearest: [
        {
          path: "duty.setPoints.coilLeaving",
          value: typed(maximumDewPoint),
          words: "cool to the dew point, and reheat in the rooms",
        },
        {
          path: "duty.setPoints.maximumDewPoint",
          value: typed(coil + 0.6),
          words: "take the dew point that the coil leaves",
        },
      ],
    });
  }
  if (winterMinimumDewPoint !== undefined && winterMinimumDewPoint > winterSupply - 1) {
    found.push({
      words: `supply air of ${inBothUnits(winterSupply, "temperature")} in winter holds no dew point of ${inBothUnits(winterMinimumDewPoint, "temperature")}`,
      nearest: [
        { path: "duty.setPoints.winterMinimumDewPoint", value: typed(winterSupply - 5), words: "a drier winter" },
      ],
    });
  }
  if (winterMinimumDewPoint !== undefined && duty.utilities.steam === undefined) {
    found.push({
      words: "the winter air is to be humidified, and there is no steam to do it with",
      nearest: [{ path: "duty.utilities.steam.pressureAtCoil", value: "10 psig", words: "give steam" }],
    });
  }
  return found;
}

function heatingContradictions(duty: Duty): readonly Contradiction[] {
  const { steam, heatingWater } = duty.utilities;
  const { winterSupply } = duty.setPoints;
  const winter = conditionOfDay(duty, designDays(duty)[3]!, undefined);
  const { outsideAirShare, dryBulb } = winter.returnAir;
  const mixed = outsideAirShare * winter.outdoor.dryBulb + (1 - outsideAirShare) * dryBulb;
  if (mixed >= winterSupply) return [];
  const hottest = steam
    ? steamSaturationTemperature(steam.pressureAtCoil + winter.barometricPressure)
    : heatingWater?.supply;
  if (hottest === undefined) {
    return [
      {
        words: `the air is to leave at ${inBothUnits(winterSupply, "temperature")} on a winter day of ${inBothUnits(winter.outdoor.dryBulb, "temperature")}, and there is neither steam nor hot water`,
        nearest: [
          { path: "duty.utilities.steam.pressureAtCoil", value: "10 psig", words: "give steam" },
          group("give hot water with glycol", "duty.utilities.heatingWater", {
            supply: "160 °F",
            drop: "30 F°",
            glycol: "propylene glycol",
            concentration: "35 %",
          }),
        ],
      },
    ];
  }
  if (hottest > winterSupply + 5) return [];
  return [
    {
      words: `the air is to leave at ${inBothUnits(winterSupply, "temperature")} in winter, and what heats it comes at ${inBothUnits(hottest, "temperature")}`,
      nearest: [{ path: "duty.setPoints.winterSupply", value: typed(hottest - 5), words: "cooler winter supply air" }],
    },
  ];
}

function returnContradictions(duty: Duty): readonly Contradiction[] {
  if (duty.outsideAirShare >= 1 || duty.returnAir !== undefined) return [];
  return [
    {
      words: `${printQuantity(1 - duty.outsideAirShare, "share", "ip")} of the air is to come back from the building, and nothing is said of that air`,
      nearest: [
        { path: "duty.outsideAirShare", value: "100 %", words: "take all air from outside" },
        group("say what the return air is like", "duty.returnAir", {
          "summer.dryBulb": "75 °F",
          "summer.relativeHumidity": "50 %",
          "winter.dryBulb": "70 °F",
          "winter.relativeHumidity": "30 %",
        }),
      ],
    },
  ];
}

/** A way that gives a group of the duty with its members. */
function group(words: string, path: string, members: Readonly<Record<string, string>>): Way {
  const [first, ...also] = Object.entries(members).map(([name, value]) => ({ path: `${path}.${name}`, value }));
  return { ...first!, words, also };
}

function typed(temperature: number): string {
  return printQuantity(temperature, "temperature", "ip").replace(/−/g, "-");
}
