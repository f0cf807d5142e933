import { steamTemperatureNeeded } from "@oncethrough/engine/component/coil/steam-side";
import { steamLatentHeat, steamSaturationTemperature } from "@oncethrough/engine/fluid/steam";
import { type CaseData, isCaseData } from "./case-data.ts";
import { kilojoules, namedRows } from "./coil-fitted.ts";
import { firstNumber, needNumber } from "./coil-inputs.ts";
import { caseName } from "./format.ts";
import { notRunRow, type Row } from "./row.ts";

const ATMOSPHERE = 101_325;

/** Steam that an airflow condenses between two temperatures. */
export function steamBalanceRows(name: string, inputs: CaseData, outputs: CaseData): Row[] {
  const massFlow = firstNumber(inputs, "m_air_kg_s") ?? needNumber(inputs, "V_air_m3_s") * needNumber(inputs, "rho");
  const rise = needNumber(inputs, "T_air_out_C") - needNumber(inputs, "T_air_in_C");
  const heat = massFlow * kilojoules(firstNumber(inputs, "cp") ?? 1.006) * 1000 * rise;
  return namedRows(name, outputs, {
    Q_kW: ["total capacity", "kW", heat / 1000],
    steam_kg_s: ["condensate", "kg/s", heat / latentHeatOf(inputs)],
  });
}

/** J/kg: at the pressure given in figures, else as the words about the steam say, `atmospheric` or `hfg 2257 kJ/kg`. */
function latentHeatOf(inputs: CaseData): number {
  const gauge = firstNumber(inputs, "p_barg", "p_bar_g");
  const absolute = firstNumber(inputs, "p_kPa_abs");
  if (absolute !== null) return steamLatentHeat(absolute * 1000);
  if (gauge !== null) return steamLatentHeat(gauge * 1e5 + ATMOSPHERE);
  const words = String(inputs.steam);
  if (/atmospheric/i.test(words)) return steamLatentHeat(ATMOSPHERE);
  const stated = /hfg\s*([\d.]+)/i.exec(words)?.[1];
  if (stated === undefined) throw new RangeError(`the pressure of the steam is not given ("${words}")`);
  return Number(stated) * 1000;
}

/** Stall by constant effectiveness: leaving temperature and load at which steam is no warmer than the return. */
export function stallRows(name: string, inputs: CaseData, outputs: CaseData): Row[] {
  const [entering, leaving, steam, back] = ["T1", "T2", "T_steam", "T_back"].map((key) => needNumber(inputs, key)) as [
    number,
    number,
    number,
    number,
  ];
  const effectiveness = (leaving - entering) / (steam - entering);
  const atStall = entering + effectiveness * (back - entering);
  const load = (temperature: number) => (100 * (temperature - entering)) / (leaving - entering);
  return [
    ...namedRows(name, outputs, {
      TDC: ["temperature design constant", "1", 1 / (1 - effectiveness)],
      T_outlet_at_stall_C: ["leaving temperature at stall", "°C", atStall],
      load_at_stall_pct_of_full: ["load at stall", "%", load(atStall)],
    }),
    ...Object.entries(outputs).flatMap(([key, part]) => {
      const setPoint = Number(/^for_setpoint_(.+)$/.exec(key)?.[1]);
      if (!isCaseData(part) || !Number.isFinite(setPoint)) return [];
      return namedRows(name, part, {
        [`Ts_at_${setPoint}_C`]: [
          `steam temperature for ${setPoint} °C`,
          "°C",
          steamTemperatureNeeded(entering, setPoint, effectiveness),
        ],
        load_pct: [`load at ${setPoint} °C`, "%", load(setPoint)],
      });
    }),
  ];
}

/** J/kg K, of dry air: such vectors leave moisture out. */
const drySpecificHeat = 1006;

/**
 * A steam coil by its conductance: surface all at the temperature of the steam. Such vectors tell neither tubes nor
 * length, so that their film coefficients cannot be run; heat and condensate from the conductance can.
 */
export function steamVectorRows(point: CaseData, fallback: string): Row[] {
  const name = `steam coil ${caseName(point, ["rows", "fpi", "V_face", "T_in", "p_barg"], fallback)}`;
  try {
    const pressure = needNumber(point, "p_barg", "p_bar_g") * 1e5 + ATMOSPHERE;
    const flow = needNumber(point, "m_air");
    const units = needNumber(point, "UA") / (flow * drySpecificHeat);
    const entering = needNumber(point, "T_in");
    const steam = steamSaturationTemperature(pressure);
    const latentHeat = steamLatentHeat(pressure);
    const rise = (1 - Math.exp(-units)) * (steam - entering);
    const heat = flow * drySpecificHeat * rise;
    const rows = namedRows(
      name,
      point,
      {
        T_sat: ["steam temperature", "°C", steam],
        hfg: ["latent heat", "kJ/kg", latentHeat / 1000],
        NTU: ["transfer units", "1", units],
        T_air_out: ["leaving dry bulb", "°C", entering + rise],
        Q_kW: ["total capacity", "kW", heat / 1000],
        condensate_kg_h: ["condensate", "kg/h", (3600 * heat) / latentHeat],
      },
      " of steam-coil vector",
    );
    return rows.length > 0 ? rows : [notRunRow(name, "it holds no figure that the program gives")];
  } catch (error) {
    if (error instanceof RangeError) return [notRunRow(name, error.message)];
    throw error;
  }
}
