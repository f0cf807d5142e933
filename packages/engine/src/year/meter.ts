import type { QuantityKind } from "#quantity/kind";
import type { HourFigure } from "./hour-figures.ts";

/** Something that a year uses or gives, with how its rate and its total are measured. */
export interface Meter {
  readonly key: string;
  readonly name: string;
  readonly figure: HourFigure;
  readonly rate: QuantityKind;
  readonly total: QuantityKind;
}

/** What is added up over the year; a total is the hourly rate times 3600 s. */
export const meters = [
  { key: "steam", name: "steam", figure: "steamFlow", rate: "massFlow", total: "mass" },
  { key: "steamHeat", name: "heat from steam coils", figure: "steamHeat", rate: "power", total: "energy" },
  { key: "heatingWater", name: "heat from heating water", figure: "heatingWaterHeat", rate: "power", total: "energy" },
  { key: "chilledWater", name: "heat into chilled water", figure: "chilledWaterHeat", rate: "power", total: "energy" },
  { key: "electricity", name: "fan electricity", figure: "fanPower", rate: "electricPower", total: "energy" },
  { key: "humidifierWater", name: "water that humidifies", figure: "humidifierWater", rate: "massFlow", total: "mass" },
  {
    key: "coilCondensate",
    name: "condensate of the cooling coil, reclaimable",
    figure: "coilCondensate",
    rate: "massFlow",
    total: "mass",
  },
  { key: "steamCondensate", name: "steam condensate", figure: "steamCondensate", rate: "massFlow", total: "mass" },
  { key: "recovered", name: "heat recovered from exhaust", figure: "recoveredHeat", rate: "power", total: "energy" },
] as const satisfies readonly Meter[];

/** Name of a meter. */
export type MeterKey = (typeof meters)[number]["key"];
