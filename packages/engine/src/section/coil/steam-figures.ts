import { createSteamDistribution, type SteamDistribution, steamDistribution } from "#component/coil/steam-distribution";
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
  { figure: "connectionGaugePressure", name: "steam pressure at the connection", quantity: "gaugePressure" },
  { figure: "distributorLoss", name: "from there into the tubes", quantity: "pressureDifference" },
  { figure: "orificeDrop", name: "of it over the orifices", quantity: "pressureDifference" },
  { figure: "innerTubeChange", name: "along an inner tube, first orifice to last", quantity: "pressureDifference" },
  { figure: "innerTubeVelocity", name: "steam into an inner tube", quantity: "velocity" },
  { figure: "orificeUnevenness", name: "least orifice short of the most by", quantity: "share" },
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
    {
      figure: "orificeDrop",
      name: "pressure drop over an orifice of the inner tubes",
      quantity: "pressureDifference",
      equation: "Δp_o = (ṁ/(s N n C A_o))²/(2 ρ), C 0.62",
      terms: [
        { symbol: "ṁ", name: "steam, as much as condenses", quantity: "massFlow", value: (r) => r.condensate },
        { symbol: "s", name: "coils, or lanes", quantity: "count", value: (_, d) => d.block.stacked },
        { symbol: "N", name: "tubes of one", quantity: "count", value: (_, d) => d.inner.distributor.tubes },
        { symbol: "n", name: "orifices of a tube", quantity: "count", value: (_, d) => d.inner.distributor.orifices },
        {
          symbol: "d_o",
          name: "diameter of an orifice",
          quantity: "smallLength",
          value: (_, d) => d.inner.distributor.orificeDiameter,
        },
        {
          symbol: "p",
          name: "pressure in the coil, for the density",
          quantity: "absolutePressure",
          value: (r) => r.steamPressure,
        },
      ],
      evaluate: (r, d) => distributionOf(r, d).orificeDrop,
      source: "perry-handbook-1997 drilled orifice, from memory",
    },
    {
      figure: "innerTubeChange",
      name: "static pressure lost along an inner tube",
      quantity: "pressureDifference",
      equation: "Δp = (f L/(3 d) − 1) ρ V²/2",
      terms: [
        { symbol: "V", name: "steam into an inner tube", quantity: "velocity", value: (r) => r.innerTubeVelocity },
        { symbol: "L", name: "length", quantity: "length", value: (_, d) => d.inner.distributor.length },
        { symbol: "d", name: "bore", quantity: "smallLength", value: (_, d) => d.inner.distributor.bore },
      ],
      evaluate: (r, d) => distributionOf(r, d).alongTube,
      source: "perry-handbook-1997 perforated-pipe distributors, from memory",
    },
    {
      figure: "orificeUnevenness",
      name: "steam of the least orifice short of that of the most",
      quantity: "share",
      equation: "u = 1 − √((1 − x)/(1 + x)), x = max(ρ V²/2, |Δp|)/(2 Δp_o), at most 1",
      terms: [
        { symbol: "V", name: "steam into an inner tube", quantity: "velocity", value: (r) => r.innerTubeVelocity },
        {
          symbol: "Δp",
          name: "along an inner tube",
          quantity: "pressureDifference",
          value: (r) => r.innerTubeChange,
        },
        { symbol: "Δp_o", name: "over an orifice", quantity: "pressureDifference", value: (r) => r.orificeDrop },
      ],
      evaluate: (r, d) => distributionOf(r, d).unevenness,
      source: "perry-handbook-1997 orifices ten times the rest give 5 %, from memory",
    },
    ...freezeWorking<Design, Rating>(),
    ...freezestatWorking<Design, Rating>(),
  ];
}

/** The distribution at a rating's own steam. */
function distributionOf(rating: SteamCoilFigures, { block, inner }: SteamPiping): SteamDistribution {
  const found = createSteamDistribution();
  if (rating.capacity > 0) {
    steamDistribution(inner.distributor, rating.condensate / block.stacked, rating.steamPressure, found);
  }
  return found;
}
