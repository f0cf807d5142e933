import { finEfficiency, surfaceEfficiency } from "@oncethrough/engine/component/finned-surface/fin-efficiency";
import { type FinnedBank, finnedBank } from "@oncethrough/engine/component/finned-surface/finned-bank";
import {
  wangLouverColburn,
  wangLouverFriction,
  wangWavyColburn,
  wangWavyFriction,
} from "@oncethrough/engine/component/finned-surface/formed-fin";
import {
  elmahdyMitalasColburn,
  grayWebbColburn,
  mcQuistonColburn,
  wangPlainColburn,
  wangPlainFriction,
} from "@oncethrough/engine/component/finned-surface/plain-fin";
import { wangWetColburn, wangWetFriction } from "@oncethrough/engine/component/finned-surface/wet-fin";
import { type CaseData, isCaseData, listAt, numberAt } from "./case-data.ts";
import { needNumber, partOf } from "./coil-inputs.ts";
import { caseRows, type Figure, type Format, listRows, metaOf } from "./format.ts";
import { notRunRow, type Row } from "./row.ts";

/** Vectors of air-side correlations: finned banks with their areas, and factors at face velocities. */
export const coilCorrelations: Format = {
  name: "coil correlations",
  recognises: (data) => Object.values(partOf(data, "geometries")).some((each) => isCaseData(each) && "Fp" in each),
  rows: (data) => [
    ...Object.entries(partOf(data, "geometries")).flatMap(([name, geometry]) =>
      isCaseData(geometry)
        ? geometryRows(geometry, metaOf(data), name)
        : [notRunRow(`geometry ${name}`, "it is not an object")],
    ),
    ...listRows(listAt(data, "points"), "point", (point, name) => pointRows(point, data, name)),
  ],
};

const shapeKeys = ["N", "Pt", "Pl", "Dc", "Fp", "tf"];

/** Areas are given per metre of tube, twenty tubes high. */
const tubesHigh = 20;

function bankOf(geometry: CaseData): FinnedBank {
  const [rows, across, along, diameter, pitch, thickness] = shapeKeys.map((key) => needNumber(geometry, key)) as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  return finnedBank({
    rows,
    tubesPerRow: tubesHigh,
    finnedLength: 1,
    transversePitch: across,
    longitudinalPitch: along,
    staggered: true,
    tubeOutsideDiameter: diameter,
    tubeWall: 0.0005,
    finPitch: pitch,
    finThickness: thickness,
    collars: false,
  });
}

function geometryRows(geometry: CaseData, meta: CaseData, name: string): Row[] {
  return caseRows(`geometry ${name}`, geometry, meta, shapeKeys, () => {
    const bank = bankOf(geometry);
    return [
      { key: "Ao", unit: "m²", got: () => bank.outsideArea },
      { key: "Af", unit: "m²", got: () => bank.finArea },
      { key: "Ap", unit: "m²", got: () => bank.primaryArea },
      { key: "Ac", unit: "m²", got: () => bank.freeFlowArea },
      { key: "sigma", unit: "1", got: () => bank.freeFlowShare },
      { key: "Dh", unit: "m", got: () => bank.hydraulicDiameter },
      { key: "Ao_At", unit: "1", got: () => bank.outsideArea / bank.bareArea },
      { key: "Afr", unit: "m²", got: () => bank.faceArea },
    ];
  });
}

function pointRows(point: CaseData, data: CaseData, fallback: string): Row[] {
  const label = typeof point.geometry === "string" ? point.geometry : "";
  const velocity = numberAt(point, "V_face");
  const name = label === "" ? fallback : `${label}${velocity === null ? "" : `, V_face ${velocity}`}`;
  const geometry = partOf(data, "geometries")[label];
  if (!isCaseData(geometry)) return [notRunRow(name, `there is no geometry "${label}"`)];
  return caseRows(name, point, metaOf(data), ["V_face", "rho", "mu"], () => {
    const bank = bankOf(geometry);
    for (const key of ["V_face", "rho", "mu"]) {
      if (!((point[key] as number) > 0)) throw new RangeError(`${key} ${point[key]}: more than 0 is wanted`);
    }
    const massFlux = ((point.V_face as number) * (point.rho as number)) / bank.freeFlowShare;
    const reynolds = (massFlux * bank.collarDiameter) / (point.mu as number);
    return [
      { key: "Re_Dc", unit: "1", got: () => reynolds },
      { key: "Re_Dh", unit: "1", got: () => (reynolds * bank.hydraulicDiameter) / bank.collarDiameter },
      { key: "Gc", unit: "kg/m²s", got: () => massFlux },
      ...plainFigures(bank, reynolds, massFlux, point),
      ...formedFigures(bank, reynolds, massFlux, point),
      ...efficiencyFigures(bank, point),
      ...absent,
    ];
  });
}

/** Fanning friction over the depth of the bank, at one density. */
function pressureDrop(friction: number, bank: FinnedBank, massFlux: number, point: CaseData): number {
  return ((bank.outsideArea / bank.freeFlowArea) * friction * massFlux ** 2) / (2 * (point.rho as number));
}

function plainFigures(bank: FinnedBank, reynolds: number, massFlux: number, point: CaseData): Figure[] {
  // Beyond six rows the program's factor stands as it is at six; the vectors have that in a column of its own.
  const beyond = bank.rows > 6 ? refuse("no Colburn factor of this correlation beyond six rows") : undefined;
  const colburn = () => wangPlainColburn(bank, reynolds);
  const own = (got: () => number) => beyond ?? got;
  const friction = () => wangPlainFriction(bank, reynolds);
  const wetFriction = () => wangWetFriction(bank, reynolds, filmReynolds);
  return [
    { key: "j_WCC2000", unit: "1", got: own(colburn) },
    { key: "j_WCC2000_N_capped_6", unit: "1", got: colburn },
    {
      key: "h_WCC2000",
      unit: "W/m²K",
      got: own(() => (colburn() * massFlux * needNumber(point, "cp")) / needNumber(point, "Pr") ** (2 / 3)),
    },
    { key: "f_WCC2000", unit: "1", got: friction },
    { key: "dp_dry_WCC2000_Pa", unit: "Pa", got: () => pressureDrop(friction(), bank, massFlux, point) },
    { key: "j_wet_Wang2000_Refilm8", unit: "1", got: own(() => wangWetColburn(bank, reynolds)) },
    { key: "f_wet_Wang2000_Refilm8", unit: "1", got: wetFriction },
    { key: "dp_wet_Wang2000_Pa", unit: "Pa", got: () => pressureDrop(wetFriction(), bank, massFlux, point) },
    { key: "j_GrayWebb", unit: "1", got: () => grayWebbColburn(bank, reynolds) },
    { key: "j_McQuiston", unit: "1", got: () => mcQuistonColburn(bank, reynolds) },
    { key: "j_ElmahdyMitalas", unit: "1", got: () => elmahdyMitalasColburn(bank, reynolds) },
  ];
}

/** Film Reynolds number of the condensate for which wet vectors are given. */
const filmReynolds = 8;

function formedFigures(bank: FinnedBank, reynolds: number, massFlux: number, point: CaseData): Figure[] {
  const wavyFriction = () => wangWavyFriction(bank, reynolds);
  return [
    { key: "j_wavy_Wang1997", unit: "1", got: () => wangWavyColburn(bank, reynolds) },
    { key: "f_wavy_Wang1997", unit: "1", got: wavyFriction },
    { key: "dp_wavy_Pa", unit: "Pa", got: () => pressureDrop(wavyFriction(), bank, massFlux, point) },
    { key: "j_convexlouver_Wang1998", unit: "1", got: () => wangLouverColburn(bank, reynolds) },
    { key: "f_convexlouver_Wang1998", unit: "1", got: () => wangLouverFriction(bank, reynolds) },
  ];
}

/** W/m K, and the slope of the saturation curve over the specific heat: those that the vectors' names tell. */
const finConductivity = 220;
const wetSlope = 2.4;

/** Efficiencies at the coefficient that the vector holds. */
function efficiencyFigures(bank: FinnedBank, point: CaseData): Figure[] {
  const fin = (slope: number) =>
    finEfficiency(slope * needNumber(point, "h_WCC2000"), finConductivity, bank.finThickness, bank.finLength);
  const share = bank.finArea / bank.outsideArea;
  return [
    { key: "eta_fin_dry_k220", unit: "1", got: () => fin(1) },
    { key: "eta_o_dry", unit: "1", got: () => surfaceEfficiency(share, fin(1)) },
    { key: "eta_fin_wet_b2p4", unit: "1", got: () => fin(wetSlope) },
    { key: "eta_o_wet_b2p4", unit: "1", got: () => surfaceEfficiency(share, fin(wetSlope)) },
  ];
}

function refuse(what: string): () => never {
  return () => {
    throw new RangeError(`the program has ${what}`);
  };
}

/** Figures of correlations that the program leaves out. */
const absent: readonly Figure[] = [
  "j_wet_Wang1997",
  "f_wet_Wang1997",
  "dp_wet_Wang1997_Pa",
  "j_plain_Wang1996",
  "f_plain_Wang1996",
].map((key) => ({
  key,
  unit: key.endsWith("_Pa") ? "Pa" : "1",
  got: refuse("no such correlation: its transcription is in doubt"),
}));
