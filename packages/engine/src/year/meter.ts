import type { QuantityKind, UnitSystem } from "#quantity/kind";
import { groupedNumber, printInUnit, printQuantity } from "#quantity/print";
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
  {
    key: "recoveredCooling",
    name: "cooling recovered from exhaust",
    figure: "recoveredCooling",
    rate: "power",
    total: "energy",
  },
] as const satisfies readonly Meter[];

/** Name of a meter. */
export type MeterKey = (typeof meters)[number]["key"];

/** Units in which what meters count is usually read, where they are not those of the kind. */
const usualUnits: Readonly<
  Record<UnitSystem, Readonly<Partial<Record<MeterKey, { readonly total: string; readonly rate?: string }>>>>
> = {
  ip: {
    chilledWater: { total: "ton·h", rate: "tons" },
    electricity: { total: "kWh" },
    steamHeat: { total: "MMBtu", rate: "MBH" },
    heatingWater: { total: "MMBtu", rate: "MBH" },
    recovered: { total: "MMBtu", rate: "MBH" },
    recoveredCooling: { total: "ton·h", rate: "tons" },
  },
  si: {
    chilledWater: { total: "kWh" },
    electricity: { total: "kWh" },
    steamHeat: { total: "kWh" },
    heatingWater: { total: "kWh" },
    recovered: { total: "kWh" },
    recoveredCooling: { total: "kWh" },
  },
};

/** What a meter counted, or its rate, for a person to read: in the usual unit, thousands apart, four digits that count. */
export function meterText(key: MeterKey, value: number, what: "total" | "rate", system: UnitSystem): string {
  const kind = meters.find((each) => each.key === key)![what];
  const unit = usualUnits[system][key]?.[what];
  return unit === undefined ? printQuantity(value, kind, system) : grouped(printInUnit(value, kind, unit));
}

function grouped(text: string): string {
  return text.replace(/^-?[\d.,]+/, (digits) => {
    const value = Number(digits.replaceAll(",", ""));
    const most = Math.abs(value) >= 1000 ? 0 : 3 - Math.max(0, Math.floor(Math.log10(Math.max(1e-9, Math.abs(value)))));
    return groupedNumber(value, Math.max(0, Math.min(3, most)));
  });
}
