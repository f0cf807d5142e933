import { dropLegPressure } from "#component/coil/steam-side";
import { steamLatentHeat } from "#fluid/steam";
import type { FigureLine, WorkingLine } from "../contract.ts";
import { freezeFigureLines, freezeWorking } from "./freeze.ts";
import { freezestatFigureLines, freezestatWorking } from "./freezestat.ts";
import { fallShare, type SteamCoilFigures, type SteamPiping } from "./steam.ts";

/** The figures that coils on steam show. */
export const steamFigureLines: readonly FigureLine<SteamCoilFigures>[] = [
  { figure: "leavingDryBulb", name: "leaving dry bulb", quantity: "temperature" },
  { figure: "capacity", name: "capacity", quantity: "power" },
  { figure: "fullCapacity", name: "capacity with the valve open", quantity: "power" },
  { figure: "loadShare", name: "share of it in use", quantity: "share" },
  { figure: "neededSteamTemperature", name: "steam temperature that the load needs", quantity: "temperature" },
  { figure: "steamTemperature", name: "steam in the coil", quantity: "temperature" },
  { figure: "steamGaugePressure", name: "steam pressure in the coil", quantity: "gaugePressure" },
  { figure: "stalled", name: "stalled (1) or draining (0)", quantity: "count" },
  { figure: "stallAirTemperature", name: "stalls above entering air of", quantity: "temperature" },
  { figure: "breakerAirTemperature", name: "vacuum breaker open above entering air of", quantity: "temperature" },
  { figure: "activeShare", name: "share of the surface active", quantity: "share" },
  { figure: "warmEnd", name: "air behind the active part", quantity: "temperature" },
  { figure: "coldEnd", name: "air behind the inactive part", quantity: "temperature" },
  { figure: "condensate", name: "condensate", quantity: "massFlow" },
  { figure: "condensateTemperature", name: "condensate temperature", quantity: "temperature" },
  { figure: "trapCapacity", name: "trap capacity at half a psi", quantity: "massFlow" },
  { figure: "dropLegHead", name: "head of the drop leg", quantity: "pressureDifference" },
  { figure: "neededDropLeg", name: "drop leg needed against the return", quantity: "length" },
  { figure: "tubeFall", name: "fall of the tubes to their outlet", quantity: "length" },
  ...freezeFigureLines("condensate", "steam fails"),
  { figure: "iceAsItStands", name: "first ice in condensate that stands now", quantity: "minutes" },
  ...freezestatFigureLines,
  { figure: "faceVelocity", name: "face velocity", quantity: "velocity" },
  { figure: "totalPressureLoss", name: "air pressure loss", quantity: "pressureDifference" },
  { figure: "effectiveness", name: "effectiveness, whole surface active", quantity: "share" },
  { figure: "airCoefficient", name: "air film", quantity: "heatTransferCoefficient" },
  { figure: "surfaceEfficiency", name: "efficiency of the surface", quantity: "share" },
  { figure: "condensingCoefficient", name: "condensing film", quantity: "heatTransferCoefficient" },
  { figure: "rangeDistance", name: "distance from the correlation's range", quantity: "share" },
];

/** The working of the steam side. */
export function steamSideWorking<Design extends SteamPiping, Rating extends SteamCoilFigures>(): WorkingLine<
  Design,
  Rating
>[] {
  return [
    {
      figure: "condensate",
      name: "condensate",
      quantity: "massFlow",
      equation: "ṁ = Q/h_fg(p)",
      terms: [
        { symbol: "Q", name: "capacity", quantity: "power", value: (r) => r.capacity },
        { symbol: "p", name: "pressure in the coil", quantity: "absolutePressure", value: (r) => r.steamPressure },
      ],
      evaluate: (r) => (r.capacity > 0 ? r.capacity / steamLatentHeat(r.steamPressure) : 0),
      source: "iapws-if97-2007",
    },
    {
      figure: "loadShare",
      name: "share of the open coil's capacity in use",
      quantity: "share",
      equation: "s = Q/Q_open",
      terms: [
        { symbol: "Q", name: "capacity", quantity: "power", value: (r) => r.capacity },
        { symbol: "Q_open", name: "capacity with the valve open", quantity: "power", value: (r) => r.fullCapacity },
      ],
      evaluate: (r) => (r.capacity > 0 ? r.capacity / r.fullCapacity : 0),
      source: "definition",
    },
    {
      figure: "dropLegHead",
      name: "head of the drop leg",
      quantity: "pressureDifference",
      equation: "p = ρ g h, ρ 965 kg/m³",
      terms: [
        { symbol: "h", name: "outlet of the coil down to the trap", quantity: "length", value: (_, d) => d.dropLeg },
      ],
      evaluate: (_, d) => dropLegPressure(d.dropLeg),
      source: "steam-coil-guide 14 in. give about half a psi",
    },
    {
      figure: "tubeFall",
      name: "fall of the tubes to their outlet",
      quantity: "length",
      equation: "f = L · 1/8 in/ft",
      terms: [
        { symbol: "L", name: "tubes between sheets", quantity: "length", value: (_, d) => d.block.coil.finnedLength },
      ],
      evaluate: (_, d) => fallShare * d.block.coil.finnedLength,
      source: "steam-coil-guide",
    },
    ...freezeWorking<Design, Rating>(),
    ...freezestatWorking<Design, Rating>(),
  ];
}
