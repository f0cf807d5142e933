import {
  driftThroughOpenDampers,
  firstIce,
  frozenTube,
  leakThroughShutDampers,
  longestWait,
  rowConductance,
  rowHeatCapacity,
  rowMeltingHeat,
} from "#component/coil/time-to-freeze";
import type { Liquid } from "#fluid/liquid";
import { moistAirSpecificHeat } from "#fluid/moist-air";
import type { Air } from "../air.ts";
import type { FigureLine, Note, SectionCondition, SectionRating, WorkingLine } from "../contract.ts";
import type { CoilBlock } from "./block.ts";

/** What every coil reports about freezing. Heat and conductance are those of the first row of one coil. */
export interface FreezeFigures extends SectionRating {
  airCoefficient: number;
  surfaceEfficiency: number;
  /** °C: freezing point of what the tubes hold, coldest inside tube wall, coldest liquid or condensate; K of wall over freezing. */
  freezePoint: number;
  coldestTubeWall: number;
  coldestFluid: number;
  freezeMargin: number;
  /** °C of liquid or condensate when its flow is lost; of the coldest air that enters then, with fan and without. */
  standingTemperature: number;
  strandedAir: number;
  /** J/K and J of what stands in the first row. */
  rowHeatCapacity: number;
  rowMeltingHeat: number;
  /** W/K of air to row: air as it flows, leaking past shut dampers, drifting through open ones. */
  rowConductance: number;
  leakConductance: number;
  driftConductance: number;
  /** 1 where valve and pump keep liquid or steam in the tubes when the fan stops, else 0. */
  flowsWithoutFan: number;
  /** s to the first ice and the frozen tube; one day at most, which stands for never. */
  iceAfterFlowLoss: number;
  frozenAfterFlowLoss: number;
  iceAfterFanLoss: number;
  iceAfterFanLossOpen: number;
}

/** Zeros for `FreezeFigures`, to be spread. */
export const noFreezeFigures = {
  freezePoint: 0,
  coldestTubeWall: 0,
  coldestFluid: 0,
  freezeMargin: 0,
  standingTemperature: 0,
  strandedAir: 0,
  rowHeatCapacity: 0,
  rowMeltingHeat: 0,
  rowConductance: 0,
  leakConductance: 0,
  driftConductance: 0,
  flowsWithoutFan: 0,
  iceAfterFlowLoss: longestWait,
  frozenAfterFlowLoss: longestWait,
  iceAfterFanLoss: longestWait,
  iceAfterFanLossOpen: longestWait,
} as const;

/** What the tubes hold when flow or steam is lost. */
export interface Standing {
  readonly liquid: Liquid;
  /** Share of the bore that it fills. */
  readonly fill: number;
  /** °C. */
  readonly temperature: number;
  /** Share of the section's air that passes this coil then. */
  readonly airShare: number;
  /** Valve and pump keep liquid or steam in the tubes when the fan stops. */
  readonly staysWithoutFan: boolean;
}

/** Writes times to freeze; film and efficiency of the surface, coldest wall and fluid, and freezing point stand already. */
export function setFreezeFigures(block: CoilBlock, standing: Standing, at: SectionCondition, out: FreezeFigures): void {
  const { coil } = block;
  const { entering, freezePoint } = out;
  const runs = at.operation.fansRunning;
  const capacity =
    ((standing.airShare * entering.dryAirFlow) / block.stacked) * moistAirSpecificHeat(entering.humidityRatio);
  const surface = out.airCoefficient * out.surfaceEfficiency;
  out.freezeMargin = out.coldestTubeWall - freezePoint;
  out.standingTemperature = standing.temperature;
  // Without the fan outside air leaks in as it is; nothing before the coil is counted on to warm it.
  out.strandedAir = runs ? Math.min(entering.coldestFilament, at.condition.outdoor.dryBulb) : entering.coldestFilament;
  out.rowHeatCapacity = rowHeatCapacity(coil, standing.liquid, standing.fill);
  out.rowMeltingHeat = rowMeltingHeat(coil, standing.liquid, standing.fill);
  out.rowConductance = rowConductance(coil, capacity, surface);
  out.leakConductance = runs ? rowConductance(coil, leakThroughShutDampers * capacity, surface) : out.rowConductance;
  out.driftConductance = runs ? rowConductance(coil, driftThroughOpenDampers * capacity, surface) : out.rowConductance;
  out.iceAfterFlowLoss = iceIn(out, out.rowConductance, entering.coldestFilament);
  out.frozenAfterFlowLoss = frozenTube(
    out.iceAfterFlowLoss,
    out.rowMeltingHeat,
    out.rowConductance,
    entering.coldestFilament,
    freezePoint,
  );
  out.flowsWithoutFan = standing.staysWithoutFan ? 1 : 0;
  out.iceAfterFanLoss = iceWithoutFan(out, out.leakConductance);
  out.iceAfterFanLossOpen = iceWithoutFan(out, out.driftConductance);
}

function iceIn(out: FreezeFigures, conductance: number, air: number): number {
  return firstIce(out.rowHeatCapacity, conductance, out.standingTemperature, air, out.freezePoint);
}

function iceWithoutFan(out: FreezeFigures, conductance: number): number {
  const isKept = out.flowsWithoutFan === 1 && out.standingTemperature > out.freezePoint;
  return isKept ? longestWait : iceIn(out, conductance, out.strandedAir);
}

/** The figures that coils show about freezing; `fluid` and `lost` are what the tubes hold and what fails. */
export function freezeFigureLines(fluid: string, lost: string): readonly FigureLine<FreezeFigures>[] {
  return [
    { figure: "coldestTubeWall", name: "coldest tube wall", quantity: "temperature" },
    { figure: "coldestFluid", name: `coldest ${fluid}`, quantity: "temperature" },
    { figure: "freezeMargin", name: "coldest tube wall above freezing", quantity: "temperatureDifference" },
    { figure: "iceAfterFlowLoss", name: `first ice if ${lost}, air as it flows`, quantity: "minutes" },
    { figure: "frozenAfterFlowLoss", name: `a tube frozen if ${lost}, air as it flows`, quantity: "minutes" },
    { figure: "iceAfterFanLoss", name: "first ice if the fan stops, dampers shut", quantity: "minutes" },
    { figure: "iceAfterFanLossOpen", name: "first ice if the fan stops, dampers stay open", quantity: "minutes" },
  ];
}

/** The working behind margin and times. */
export function freezeWorking<Design, Rating extends FreezeFigures>(): WorkingLine<Design, Rating>[] {
  return [
    {
      figure: "freezeMargin",
      name: "coldest tube wall above freezing",
      quantity: "temperatureDifference",
      equation: "Δ = t_wall − t_f",
      terms: [
        {
          symbol: "t_wall",
          name: "coldest inside tube wall, where the coldest filament passes",
          quantity: "temperature",
          value: (r) => r.coldestTubeWall,
        },
        { symbol: "t_f", name: "freezing point of what the tubes hold", quantity: "temperature", value: freezePointOf },
      ],
      evaluate: (r) => r.coldestTubeWall - r.freezePoint,
      source: "derived-here wall by the resistances in series at the coldest filament",
    },
    iceWorking("iceAfterFlowLoss", "first ice after loss of flow, air as it flows", {
      conductance: (r) => r.rowConductance,
      conductanceName: "air to first row: ṁc_p (1 − exp(−UA/ṁc_p)), 200 W/m²K of still liquid",
      air: (r) => r.entering.coldestFilament,
      airName: "coldest filament that enters",
      evaluate: (r) => iceIn(r, r.rowConductance, r.entering.coldestFilament),
    }),
    iceWorking("iceAfterFanLoss", "first ice after loss of the fan, dampers shut", {
      conductance: (r) => r.leakConductance,
      conductanceName: "air to first row, shut dampers that leak 1 % of the flow",
      air: (r) => r.strandedAir,
      airName: "outside air, unheated",
      evaluate: (r) => iceWithoutFan(r, r.leakConductance),
    }),
    iceWorking("iceAfterFanLossOpen", "first ice after loss of the fan, dampers open", {
      conductance: (r) => r.driftConductance,
      conductanceName: "air to first row, open dampers: a draught of 25 Pa moves 16 % of the flow of 1000 Pa",
      air: (r) => r.strandedAir,
      airName: "outside air, unheated",
      evaluate: (r) => iceWithoutFan(r, r.driftConductance),
    }),
    {
      figure: "frozenAfterFlowLoss",
      name: "a tube of the first row frozen through",
      quantity: "minutes",
      equation: "t = t_ice + L/(G (t_f − t_a)), a day at most",
      terms: [
        { symbol: "t_ice", name: "first ice", quantity: "minutes", value: (r) => r.iceAfterFlowLoss },
        { symbol: "L", name: "heat of melting in the first row", quantity: "energy", value: (r) => r.rowMeltingHeat },
        { symbol: "G", name: "air to first row", quantity: "conductance", value: (r) => r.rowConductance },
        { symbol: "t_f", name: "freezing point", quantity: "temperature", value: freezePointOf },
        {
          symbol: "t_a",
          name: "coldest filament that enters",
          quantity: "temperature",
          value: (r) => r.entering.coldestFilament,
        },
      ],
      evaluate: (r) =>
        frozenTube(r.iceAfterFlowLoss, r.rowMeltingHeat, r.rowConductance, r.entering.coldestFilament, r.freezePoint),
      source: "derived-here latent heat through the resistance of the first row",
    },
  ];
}

const freezePointOf = (r: FreezeFigures): number => r.freezePoint;

/** Where a time to the first ice takes its air from. */
interface IceAir {
  readonly conductance: (rating: FreezeFigures) => number;
  readonly conductanceName: string;
  readonly air: (rating: FreezeFigures) => number;
  readonly airName: string;
  readonly evaluate: (rating: FreezeFigures) => number;
}

function iceWorking<Design, Rating extends FreezeFigures>(
  figure: "iceAfterFlowLoss" | "iceAfterFanLoss" | "iceAfterFanLossOpen",
  name: string,
  { conductance, conductanceName, air, airName, evaluate }: IceAir,
): WorkingLine<Design, Rating> {
  return {
    figure,
    name,
    quantity: "minutes",
    equation: "t = C/G ln((t₀ − t_a)/(t_f − t_a)), a day at most; a day where valve and pump keep the tubes warm",
    terms: [
      {
        symbol: "C",
        name: "heat that a kelvin of the first row holds, what stands in it and metal",
        quantity: "energy",
        value: (r) => r.rowHeatCapacity,
      },
      { symbol: "G", name: conductanceName, quantity: "conductance", value: conductance },
      { symbol: "t₀", name: "what stands, at first", quantity: "temperature", value: (r) => r.standingTemperature },
      { symbol: "t_a", name: airName, quantity: "temperature", value: air },
      { symbol: "t_f", name: "freezing point", quantity: "temperature", value: freezePointOf },
    ],
    evaluate,
    source: "derived-here one capacity behind one resistance",
  };
}

/** How long the tubes have when something fails, and on what assumptions; nothing where no air would freeze them. */
export function freezeNotes(lost: string, rating: FreezeFigures): Note[] {
  const { iceAfterFlowLoss, frozenAfterFlowLoss, iceAfterFanLoss, iceAfterFanLossOpen } = rating;
  const notes: Note[] = [];
  if (iceAfterFlowLoss < longestWait) {
    notes.push({
      what:
        iceAfterFlowLoss === 0
          ? "what stands in the first row is as cold as its freezing point: ice"
          : `if ${lost} with the air as it flows now: first ice in the first row after ${waited(iceAfterFlowLoss)}, a tube frozen after ${waited(frozenAfterFlowLoss)}`,
      weight: "caution",
      source: "derived-here",
    });
  }
  if (Math.min(iceAfterFanLoss, iceAfterFanLossOpen) < longestWait && iceAfterFlowLoss > 0) {
    notes.push({
      what: `if the fan stops, outside air unheated: first ice after ${waited(iceAfterFanLoss)} behind shut dampers that leak 1 % of the flow, after ${waited(iceAfterFanLossOpen)} where they stay open to a draught of 25 Pa`,
      weight: "caution",
      source: "derived-here",
    });
  }
  return notes;
}

/** A time for a sentence. */
export function waited(seconds: number): string {
  if (seconds >= longestWait) return "more than 24 h";
  if (seconds < 90) return `${Math.round(seconds)} s`;
  return seconds < 7200 ? `${Math.round(seconds / 60)} min` : `${Math.round(seconds / 3600)} h`;
}

/** What a coil of liquid holds when its pump stops, flow as it is now. */
export function standingLiquid(
  liquid: Liquid,
  rating: FreezeFigures & { liquidMassFlow: number; liquidEntering: number; liquidLeaving: number },
  staysWithoutFan: boolean,
): Standing {
  const flows = rating.liquidMassFlow > 0;
  const temperature = flows
    ? Math.min(rating.liquidEntering, rating.liquidLeaving)
    : (rating.entering as Air).coldestFilament;
  return { liquid, fill: 1, temperature, airShare: 1, staysWithoutFan };
}
