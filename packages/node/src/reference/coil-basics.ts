import {
  counterflowEffectiveness,
  crossflowEffectiveness,
  passesEffectiveness,
} from "@oncethrough/engine/component/coil/effectiveness";
import { tubeFriction, tubeNusselt } from "@oncethrough/engine/component/coil/tube-side";
import { waterConductivity, waterDensity, waterSpecificHeat, waterViscosity } from "@oncethrough/engine/fluid/water";
import { type CaseData, listAt, someHave } from "./case-data.ts";
import { caseName, caseRows, type Figure, type Format, listRows, metaOf } from "./format.ts";
import type { Row } from "./row.ts";

/** Effectiveness of exchangers by transfer units, and water in a smooth tube by velocity. */
export const coilBasics: Format = {
  name: "coil basics",
  recognises: (data) => someHave(listAt(data, "eps_ntu"), "NTU") || someHave(listAt(data, "tube_side"), "Di", "V"),
  rows: (data) => [
    ...listRows(listAt(data, "eps_ntu"), "effectiveness", (point, name) =>
      effectivenessRows(point, metaOf(data), name),
    ),
    ...listRows(listAt(data, "tube_side"), "tube", (point, name) => tubeRows(point, metaOf(data), name)),
  ],
};

function effectivenessRows(point: CaseData, meta: CaseData, fallback: string): Row[] {
  const inputs = ["NTU", "Cr"];
  return caseRows(caseName(point, inputs, fallback), point, meta, inputs, () => {
    const units = point.NTU as number;
    const ratio = point.Cr as number;
    if (!(units >= 0 && ratio >= 0 && ratio <= 1)) {
      throw new RangeError(`NTU ${units}, Cr ${ratio}: NTU of 0 or more and Cr of 0 to 1 are wanted`);
    }
    const passes = Object.keys(point).flatMap((key): Figure[] => {
      const count = Number(/^counter_cross_(\d+)$/.exec(key)?.[1]);
      if (!(count >= 1)) return [];
      const pass = crossflowEffectiveness(units / count, ratio);
      return [{ key, unit: "1", got: () => passesEffectiveness(pass, ratio, count) }];
    });
    return [
      { key: "counterflow", unit: "1", got: () => counterflowEffectiveness(units, ratio) },
      { key: "crossflow_both_unmixed", unit: "1", got: () => crossflowEffectiveness(units, ratio) },
      ...passes,
    ];
  });
}

/** Far from the tube's start, where published vectors stand. */
const endless = 0;

function tubeRows(point: CaseData, meta: CaseData, fallback: string): Row[] {
  const inputs = ["T_C", "V", "Di"];
  const name = caseName(point, inputs, fallback);
  return caseRows(point.id === undefined ? `tube ${name}` : name, point, meta, inputs, () => {
    const t = point.T_C as number;
    const velocity = point.V as number;
    const diameter = point.Di as number;
    if (!(velocity > 0 && diameter > 0)) {
      throw new RangeError(`V ${velocity} m/s, Di ${diameter} m: more than 0 is wanted`);
    }
    const density = waterDensity(t);
    const viscosity = waterViscosity(t);
    const conductivity = waterConductivity(t);
    const reynolds = (density * velocity * diameter) / viscosity;
    const prandtl = (waterSpecificHeat(t) * viscosity) / conductivity;
    const head = (density * velocity * velocity) / 2;
    return [
      { key: "Re", unit: "1", got: () => reynolds },
      {
        key: "h_W_m2K",
        unit: "W/m²K",
        got: () => (tubeNusselt(reynolds, prandtl, endless) * conductivity) / diameter,
      },
      { key: "darcy_f", unit: "1", got: () => tubeFriction(reynolds) },
      { key: "dp_Pa_per_m", unit: "Pa/m", got: () => (tubeFriction(reynolds) * head) / diameter },
      { key: "h_ElmahdyMitalas", unit: "W/m²K", got: () => refuse("no tube side by Elmahdy and Mitalas") },
    ];
  });
}

function refuse(what: string): never {
  throw new RangeError(`the program has ${what}`);
}
