import psychrolib from "psychrolib";
import { dewPointFromHumidityRatio } from "#fluid/dew-point";
import { liquidViscosity } from "#fluid/liquid";
import { enthalpyFromHumidityRatio, humidityRatioFromRelativeHumidity } from "#fluid/moist-air";
import { moistAirState } from "#fluid/moist-air-state";
import { saturationHumidityRatio } from "#fluid/saturation";
import { steamLatentHeat } from "#fluid/steam";
import { waterViscosity } from "#fluid/water";
import { saturatedDryBulbFromEnthalpy, wetBulbFromEnthalpy, wetBulbFromHumidityRatio } from "#fluid/wet-bulb";

/** A task and, where there is one, the task of the same set whose rate it is compared with. */
interface Task {
  name: string;
  /** Answers produced by one run. */
  operations: number;
  run: () => void;
  compare?: string;
}

psychrolib.SetUnitSystem(psychrolib.SI);

/** States over a year's range of weather and coils, −30…50 °C, 10…95 %, 75…101 kPa; no wet bulb within 1 K of freezing. */
const states = makeStates();
const operations = states.length;

/** Sum of all answers, so that no work can be left out as unused. */
let sink = 0;

function makeStates() {
  const list: { t: number; W: number; h: number; p: number; bulb: number }[] = [];
  for (const p of [75_000, 90_000, 101_325]) {
    for (let t = -30; t <= 50; t += 2.5) {
      for (const relativeHumidity of [0.1, 0.3, 0.5, 0.7, 0.95]) {
        const W = humidityRatioFromRelativeHumidity(t, relativeHumidity, p);
        const bulb = wetBulbFromHumidityRatio(t, W, p);
        if (Math.abs(bulb) > 1) list.push({ t, W, h: enthalpyFromHumidityRatio(t, W), p, bulb });
      }
    }
  }
  return list;
}

type State = (typeof states)[number];

function task(name: string, answer: (state: State) => number, compare?: string): Task {
  const run = () => {
    let sum = 0;
    for (const state of states) sum += answer(state);
    sink += sum;
  };
  return compare === undefined ? { name, operations, run } : { name, operations, run, compare };
}

const tasks: Task[] = [
  task("psychrolib: wet bulb from dry bulb and humidity ratio", ({ t, W, p }) =>
    psychrolib.GetTWetBulbFromHumRatio(t, W, p),
  ),
  task(
    "wet bulb from dry bulb and humidity ratio",
    ({ t, W, p }) => wetBulbFromHumidityRatio(t, W, p),
    "psychrolib: wet bulb from dry bulb and humidity ratio",
  ),
  task("psychrolib: wet bulb from enthalpy and humidity ratio", ({ h, W, p }) =>
    psychrolib.GetTWetBulbFromHumRatio(psychrolib.GetTDryBulbFromEnthalpyAndHumRatio(h, W), W, p),
  ),
  task(
    "wet bulb from enthalpy and humidity ratio",
    ({ h, W, p }) => wetBulbFromEnthalpy(h, W, p),
    "psychrolib: wet bulb from enthalpy and humidity ratio",
  ),
  task("psychrolib: state from dry and wet bulb", ({ t, bulb, p }) => {
    const values = psychrolib.CalcPsychrometricsFromTWetBulb(t, bulb, p);
    return values[0]! + values[1]! + values[4]!;
  }),
  task(
    "state from dry and wet bulb",
    ({ t, bulb, p }) => {
      const state = moistAirState({ dryBulb: t, wetBulb: bulb }, p);
      return state.humidityRatio + state.dewPoint + state.enthalpy;
    },
    "psychrolib: state from dry and wet bulb",
  ),
  task("psychrolib: dew point from humidity ratio", ({ t, W, p }) => psychrolib.GetTDewPointFromHumRatio(t, W, p)),
  task(
    "dew point from humidity ratio",
    ({ W, p }) => dewPointFromHumidityRatio(W, p),
    "psychrolib: dew point from humidity ratio",
  ),
  task("psychrolib: saturation humidity ratio", ({ t, p }) => psychrolib.GetSatHumRatio(t, p)),
  task(
    "saturation humidity ratio",
    ({ t, p }) => saturationHumidityRatio(t, p),
    "psychrolib: saturation humidity ratio",
  ),
  task("temperature of saturated air from enthalpy", ({ h, p }) => saturatedDryBulbFromEnthalpy(h, p)),
  task("water viscosity", ({ t }) => waterViscosity(t + 30)),
  task("glycol viscosity", ({ t }) => liquidViscosity({ substance: "propylene glycol", massFraction: 0.35 }, t)),
  task("latent heat of steam", ({ p }) => steamLatentHeat(p)),
];

export const suite = { title: "Fluids", tasks, checksum: () => sink };
