import { baffleSelfNoise } from "#component/attenuator";
import { defineKind, type Note, type WorkingLine } from "../contract.ts";
import { type AttenuatorDesign, attenuatorFields, prepareAttenuator } from "./design.ts";
import { attenuatorLosses } from "./losses.ts";
import { attenuatorParts } from "./parts.ts";
import { drawAttenuator } from "./picture.ts";
import {
  type AttenuatorRating,
  attenuatorSound,
  completeAttenuator,
  createAttenuatorRating,
  insertionLoss,
  rateAttenuator,
  weightedSelfNoise,
} from "./rate.ts";

/** m/s in the passages above which flow noise is heard in laboratories, by common practice. */
const noisyVelocity = 15;

const working: readonly WorkingLine<AttenuatorDesign, AttenuatorRating>[] = [
  {
    figure: "passageVelocity",
    name: "velocity in the passages",
    quantity: "velocity",
    equation: "V = Q / A",
    terms: [
      { symbol: "Q", name: "airflow at its own density", quantity: "actualAirflow", value: (r) => r.actualAirflow },
      { symbol: "A", name: "area of the passages", quantity: "area", value: (_, d) => d.passageArea },
    ],
    evaluate: (r, d) => r.actualAirflow / d.passageArea,
    source: "definition",
  },
  {
    figure: "totalPressureLoss",
    name: "loss of noses, passages and tails",
    quantity: "pressureDifference",
    equation: "Δp = K ½ ρ V², K = n ½ (1 − s) + f L / 2 g + t (1 − s)²",
    terms: [
      {
        symbol: "K",
        name: "loss on the velocity in the passages",
        quantity: "factor",
        value: (_, d) => d.lossCoefficient,
      },
      { symbol: "s", name: "open share of the face", quantity: "share", value: (_, d) => d.openShare },
      { symbol: "L", name: "length of the baffles", quantity: "length", value: (_, d) => d.baffleLength },
      { symbol: "g", name: "width of a passage", quantity: "length", value: (_, d) => d.passageWidth },
      { symbol: "ρ", name: "density", quantity: "density", value: (r) => r.density },
      { symbol: "V", name: "velocity in the passages", quantity: "velocity", value: (r) => r.passageVelocity },
    ],
    evaluate: (r, d) => d.lossCoefficient * 0.5 * r.density * r.passageVelocity * r.passageVelocity,
    source: "idelchik-handbook contraction and expansion; factors of the record",
  },
  {
    figure: "lossAt250",
    name: "insertion loss at 250 Hz with the airflow",
    quantity: "soundLevel",
    equation: "D = D₀ (g₀/g) / (1 + V/c)²",
    terms: [
      {
        symbol: "D₀",
        name: "of the record at this length, in still air",
        quantity: "soundLevel",
        value: (_, d) => (insertionLoss(d, 0, 2) * d.passageWidth) / d.attenuator.passageWidth,
      },
      { symbol: "g₀", name: "passage of the record", quantity: "length", value: (_, d) => d.attenuator.passageWidth },
      { symbol: "g", name: "passage as built", quantity: "length", value: (_, d) => d.passageWidth },
      { symbol: "V", name: "velocity in the passages", quantity: "velocity", value: (r) => r.passageVelocity },
    ],
    evaluate: (r, d) => insertionLoss(d, r.passageVelocity, 2),
    source: "bies-hansen-engineering-noise-control flow with the sound, from memory",
  },
  {
    figure: "selfNoise",
    name: "flow noise, A-weighted",
    quantity: "weightedSoundLevel",
    equation:
      "L_A = Σ bands of B + 10 lg(p c A) + 60 lg(V/c) + 10 lg(1 + (c/2fH)²) − 10 lg(1 + (f δ/V)²), with the A-weighting",
    terms: [
      { symbol: "V", name: "velocity in the passages", quantity: "velocity", value: (r) => r.passageVelocity },
      { symbol: "A", name: "area of the passages", quantity: "area", value: (_, d) => d.passageArea },
      { symbol: "H", name: "largest side of a passage", quantity: "length", value: (_, d) => d.passageHeight },
      { symbol: "p", name: "pressure", quantity: "absolutePressure", value: (r) => r.pressure },
      {
        symbol: "L₁₀₀₀",
        name: "the band of 1000 Hz of it",
        quantity: "soundLevel",
        value: (r, d) => baffleSelfNoise(r.passageVelocity, d.passageArea, d.passageHeight, r.pressure, 1000),
      },
    ],
    evaluate: (r, d) => weightedSelfNoise(d, r),
    source: "iso-14163 flow noise, from memory",
  },
];

/** Baffles that take sound out of the airway. */
export const attenuator = defineKind({
  name: "attenuator",
  meaning: "Sound-absorbing baffles side by side across the airway",
  fields: attenuatorFields,
  prepare: prepareAttenuator,
  createRating: createAttenuatorRating,
  rate: (design, air, _condition, out) => rateAttenuator(design, air, out),
  complete: (design, _, out) => completeAttenuator(design, out),
  layout: (design) => ({ length: design.length, outside: 0 }),
  parts: attenuatorParts,
  picture: drawAttenuator,
  sound: attenuatorSound,
  losses: attenuatorLosses,
  orderBy: ["passageVelocity", "totalPressureLoss", "lossAt250"],
  figures: [
    { figure: "lossAt250", name: "insertion loss at 250 Hz", quantity: "soundLevel" },
    { figure: "totalPressureLoss", name: "pressure loss", quantity: "pressureDifference" },
    { figure: "passageVelocity", name: "velocity in the passages", quantity: "velocity" },
    { figure: "faceVelocity", name: "face velocity", quantity: "velocity" },
    { figure: "selfNoise", name: "flow noise", quantity: "weightedSoundLevel" },
  ],
  working,
  notes: (design, rating) => {
    const notes: Note[] = [];
    if (design.attenuator.head.basis !== "tested") {
      notes.push({
        what: "insertion losses are not those of a test: take the tested figures of the baffles bought before they are promised",
        weight: "information",
        source: design.attenuator.head.source,
      });
    }
    if (rating.passageVelocity > noisyVelocity) {
      notes.push({
        what: "so fast in the passages that the air itself is heard",
        weight: "caution",
        source: "common-practice",
      });
    }
    if (rating.entering.freeLiquid > 0) {
      notes.push({
        what: "drops reach the baffles: wet fibre absorbs little and grows mould",
        weight: "caution",
        source: "common-practice",
      });
    }
    return notes;
  },
});
