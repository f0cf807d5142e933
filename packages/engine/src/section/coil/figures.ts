import { dryAirPressureDrop } from "#component/coil/air-pressure";
import { drainTime } from "#component/coil/drain-and-vent";
import { finEfficiency, surfaceEfficiency } from "#component/finned-surface/fin-efficiency";
import type { WorkingLine } from "../contract.ts";
import { absolutePressure } from "../station.ts";
import type { CoilBlock } from "./block.ts";
import { coilFilling } from "./connections.ts";
import { freezeWorking } from "./freeze.ts";
import type { LiquidCoilFigures } from "./liquid.ts";
import type { CoilAirFigures } from "./state.ts";

/** A design that holds a coil block. */
interface WithBlock {
  readonly block: CoilBlock;
}

/** The working of the air side that all coils share: fins, surface, dry loss. */
export function airSideWorking<
  Design extends WithBlock,
  Rating extends CoilAirFigures & {
    airCoefficient: number;
    finEfficiency: number;
    surfaceEfficiency: number;
    leavingDryBulb: number;
  },
>(): WorkingLine<Design, Rating>[] {
  return [
    {
      figure: "finEfficiency",
      name: "efficiency of the dry fin",
      quantity: "share",
      equation: "η = tanh(m L)/(m L), m = √(2 h/(k t))",
      terms: [
        { symbol: "h", name: "air film, dry", quantity: "heatTransferCoefficient", value: (r) => r.airCoefficient },
        {
          symbol: "k",
          name: "conductivity of the fin",
          quantity: "thermalConductivity",
          value: (_, d) => d.block.coil.finConductivity,
        },
        { symbol: "t", name: "fin thickness", quantity: "smallLength", value: (_, d) => d.block.coil.finThickness },
        {
          symbol: "L",
          name: "equivalent fin length",
          quantity: "smallLength",
          value: (_, d) => d.block.coil.bank.finLength,
        },
      ],
      evaluate: (r, d) =>
        r.airCoefficient > 0
          ? finEfficiency(
              r.airCoefficient,
              d.block.coil.finConductivity,
              d.block.coil.finThickness,
              d.block.coil.bank.finLength,
            )
          : 1,
      source: "schmidt-1949",
    },
    {
      figure: "surfaceEfficiency",
      name: "efficiency of the dry surface",
      quantity: "share",
      equation: "η₀ = 1 − (A_f/A)(1 − η)",
      terms: [
        { symbol: "A_f", name: "fins of one coil", quantity: "area", value: (_, d) => d.block.coil.bank.finArea },
        {
          symbol: "A",
          name: "outside surface of one coil",
          quantity: "area",
          value: (_, d) => d.block.coil.bank.outsideArea,
        },
        { symbol: "η", name: "efficiency of the dry fin", quantity: "share", value: (r) => r.finEfficiency },
      ],
      evaluate: (r, d) => surfaceEfficiency(d.block.coil.bank.finArea / d.block.coil.bank.outsideArea, r.finEfficiency),
      source: "definition",
    },
    {
      figure: "dryLoss",
      name: "loss of the dry core",
      quantity: "pressureDifference",
      equation: "Δp = (A/A_c) f G²/(2 ρ_m) + G²(1 + σ²)(1/ρ₂ − 1/ρ₁)/2",
      terms: [
        { symbol: "ṁ", name: "dry air of all coils", quantity: "massFlow", value: (r) => r.entering.dryAirFlow },
        {
          symbol: "A_c",
          name: "narrowest passage of one coil",
          quantity: "area",
          value: (_, d) => d.block.coil.bank.freeFlowArea,
        },
        {
          symbol: "A",
          name: "outside surface of one coil",
          quantity: "area",
          value: (_, d) => d.block.coil.bank.outsideArea,
        },
        { symbol: "t₁", name: "entering dry bulb", quantity: "temperature", value: (r) => r.entering.dryBulb },
        { symbol: "t₂", name: "leaving dry bulb", quantity: "temperature", value: (r) => r.leavingDryBulb },
      ],
      evaluate: (r, d) =>
        dryAirPressureDrop(
          d.block.coil,
          r.entering.dryAirFlow / d.block.stacked,
          r.entering.humidityRatio,
          r.entering.dryBulb,
          r.leavingDryBulb,
          absolutePressure(r.entering),
        ),
      source: "kays-london-1984 with the surface's friction factor",
    },
  ];
}

/** The working of the liquid side. */
export function liquidSideWorking<Design extends WithBlock, Rating extends LiquidCoilFigures>(): WorkingLine<
  Design,
  Rating
>[] {
  return [
    {
      figure: "flowShare",
      name: "share of the full flow",
      quantity: "share",
      equation: "s = ṁ/ṁ_full",
      terms: [
        { symbol: "ṁ", name: "flow", quantity: "massFlow", value: (r) => r.liquidMassFlow },
        { symbol: "ṁ_full", name: "flow with the valve open", quantity: "massFlow", value: (r) => r.fullMassFlow },
      ],
      evaluate: (r) => (r.fullMassFlow > 0 ? r.liquidMassFlow / r.fullMassFlow : 0),
      source: "definition",
    },
    {
      figure: "drainTime",
      name: "a coil runs empty through its drain in",
      quantity: "minutes",
      equation: "t = 2 V/(0.6 A √(2 g h)), the vent open",
      terms: [
        {
          symbol: "V",
          name: "liquid in one coil and its headers",
          quantity: "volume",
          value: (r, d) => coilFilling(d.block.coil, r.connection),
        },
        {
          symbol: "h",
          name: "height of the fins",
          quantity: "length",
          value: (_, d) => d.block.coil.bank.finnedHeight,
        },
        { symbol: "D", name: "bore of the drain, A = π D²/4", quantity: "length", value: (r) => r.drain },
      ],
      evaluate: (r, { block: { coil } }) => drainTime(coilFilling(coil, r.connection), coil.bank.finnedHeight, r.drain),
      source: "derived-here Torricelli's outflow of a vessel of even section",
    },
    ...freezeWorking<Design, Rating>(),
  ];
}
