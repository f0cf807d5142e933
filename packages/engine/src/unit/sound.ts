import { endReflection, sumOfLevels, weightedLevel } from "#component/fan-sound";
import { inOctaveBands, panelSoundLoss, wallRadiation, wallSoundAbsorption } from "#component/sound-path";
import type { MadeSound, SectionSound, SoundRoom } from "#section/contract";
import { noSoundLoss } from "#section/flow-sound";
import { octaveBands } from "#standard/fan-sound";
import { pathUncertainty, uncountedFlowNoise } from "#standard/sound-path";
import type { UnitRating } from "./rating.ts";
import type { Unit } from "./unit.ts";
import { sectionWithRole } from "./walk.ts";

/** Sound power that leaves the unit at one place. */
export interface SoundOutlet {
  /** dB re 1 pW in the octave bands 63 … 8000 Hz. */
  readonly levels: readonly number[];
  /** dB(A). */
  readonly weighted: number;
  /** dB either way. */
  readonly uncertainty: number;
}

/** A section as sound meets it. */
export interface SoundStep {
  readonly section: string;
  /** Which way the sound of the fan goes here. */
  readonly direction: "against the air" | "with the air" | "at the fan";
  /** dB re 1 pW where sound comes in from the fan, in the fan's own cabinet all of it; what the section takes off; what it makes itself. */
  readonly inside: readonly number[];
  readonly loss: readonly number[];
  readonly made: MadeSound | undefined;
  /** dB re 1 pW that its walls radiate; undefined for what stands outside the cabinet. */
  readonly radiated: readonly number[] | undefined;
  /** Of what it takes off. */
  readonly source: string;
  readonly certainty: string;
}

/** A section whose own flow noise no open method tells. */
export interface UncountedNoise {
  readonly section: string;
  /** m/s on its face. */
  readonly velocity: number;
  /** The trade's bound reaches so far. */
  readonly isBounded: boolean;
}

/** Sound power of the unit at a condition. */
export interface UnitSound {
  readonly intake: SoundOutlet;
  /** Into the supply duct, before anything that the duct does. */
  readonly discharge: SoundOutlet;
  readonly casing: SoundOutlet;
  /** Into the return duct, where the unit has one. */
  readonly returnOpening: SoundOutlet | undefined;
  /** dB that the intake's opening throws back. */
  readonly endReflection: readonly number[];
  readonly fan: MadeSound;
  /** In airflow order. */
  readonly steps: readonly SoundStep[];
  /** What is not among the sums, in airflow order. */
  readonly uncounted: readonly UncountedNoise[];
}

/** dB in a band that what is not counted would add where the trade's bound just holds. */
export const uncountedAddition = sumOfLevels([0, -uncountedFlowNoise.below]);

/** Whether a limit is held: certain only where the uncertainty does not reach it. */
export type LimitOutcome = "held" | "not certain" | "exceeded";

/** Holds an A-weighted sum against its limit, dB(A), with the uncertainty on the careful side both ways. */
export function limitOutcome({ weighted, uncertainty }: SoundOutlet, limit: number): LimitOutcome {
  if (weighted + uncertainty <= limit) return "held";
  return weighted - uncertainty > limit ? "exceeded" : "not certain";
}

/** Solid angle over π into which an intake radiates: flush in a wall. */
const intakeAngle = 2;

/**
 * Sound power at the intake, at the discharge, at the return opening and through the casing: what the sections make, the
 * fan above all, carried both ways through the others and added by energy. Undefined when the fan makes none.
 */
export function soundOf(unit: Unit, rating: UnitRating): UnitSound | undefined {
  const fanIndex = sectionWithRole(unit, "fan");
  const room = roomOf(unit);
  const sections = unit.sections.map(({ behaviour, design }, index) => {
    return behaviour.sound?.(design, rating.sections[index]!, room) ?? passing;
  });
  const fan = sections[fanIndex]?.made;
  if (fan === undefined) return undefined;
  const likely = fieldOf(sections, 0);
  const loud = fieldOf(sections, 1);
  const reflection = endReflectionOf(openingOf(sections) ?? unit.frame.width * unit.frame.height);
  const walls = radiatedIn(unit, room, sections, likely, 0);
  const outletOf = (levels: readonly number[], louder: readonly number[], path: number): SoundOutlet => {
    const weighted = weightedLevel(levels);
    return { levels, weighted, uncertainty: Math.hypot(weightedLevel(louder) - weighted, path) };
  };
  const { airway, casing } = pathUncertainty;
  return {
    intake: outletOf(less(likely.intake, reflection), less(loud.intake, reflection), airway),
    discharge: outletOf(likely.discharge, loud.discharge, airway),
    casing: outletOf(sumOf(walls), sumOf(radiatedIn(unit, room, sections, loud, 1)), casing),
    returnOpening: likely.back && loud.back ? outletOf(likely.back, loud.back, airway) : undefined,
    endReflection: reflection,
    fan,
    steps: sections.map((sound, index) => stepOf(unit, index, fanIndex, sound, likely, walls[index])),
    uncounted: sections.flatMap(({ uncounted: velocity }, index) => {
      if (velocity === undefined || velocity === 0) return [];
      const isBounded = velocity <= uncountedFlowNoise.velocity;
      return [{ section: unit.sections[index]!.name, velocity, isBounded }];
    }),
  };
}

const silence: readonly number[] = octaveBands.map(() => Number.NEGATIVE_INFINITY);
/** A section whose kind says nothing of sound. */
const passing: SectionSound = {
  downstream: noSoundLoss,
  upstream: noSoundLoss,
  source: "common-practice all sound is taken to pass",
  certainty: "from memory",
};

/** Sound on its way through the sections, dB re 1 pW. */
interface SoundField {
  /** What comes into each section with the air, and against it. */
  readonly withAir: readonly (readonly number[])[];
  readonly againstAir: readonly (readonly number[])[];
  readonly discharge: readonly number[];
  readonly intake: readonly number[];
  readonly back: readonly number[] | undefined;
}

/** The field when every source is louder by `share` of its uncertainty. */
function fieldOf(sections: readonly SectionSound[], share: number): SoundField {
  const withAir: (readonly number[])[] = [];
  const againstAir: (readonly number[])[] = [];
  let discharge = silence;
  for (const { downstream, made } of sections) {
    withAir.push(discharge);
    discharge = passed(discharge, downstream, made?.downstream, made, share);
  }
  let intake = silence;
  let back: readonly number[] | undefined;
  for (const { upstream, made, toReturn } of sections.toReversed()) {
    againstAir.push(intake);
    if (toReturn !== undefined) back = passed(intake, toReturn, made?.toReturn, made, share);
    intake = passed(intake, upstream, made?.upstream, made, share);
  }
  return { withAir, againstAir: againstAir.reverse(), discharge, intake, back };
}

/** What leaves a section: what came in less its loss, and what it makes itself. */
function passed(
  entering: readonly number[],
  loss: readonly number[],
  own: readonly number[] | undefined,
  made: MadeSound | undefined,
  share: number,
): readonly number[] {
  const left = less(entering, loss);
  return own === undefined || made === undefined ? left : sumOf([left, raised(own, share * made.uncertainty)]);
}

function roomOf(unit: Unit): SoundRoom {
  const { innerSkin, panelThickness } = unit.casing;
  return {
    frame: unit.frame,
    absorption: inOctaveBands((frequency) => wallSoundAbsorption(innerSkin, panelThickness, frequency)),
  };
}

/** m² of the outermost opening that a section names. */
function openingOf(sections: readonly SectionSound[]): number | undefined {
  return sections.find(({ openingArea }) => openingArea !== undefined)?.openingArea;
}

function endReflectionOf(area: number): readonly number[] {
  return inOctaveBands((frequency) => endReflection(area, frequency, intakeAngle));
}

function stepOf(
  unit: Unit,
  index: number,
  fanIndex: number,
  sound: SectionSound,
  field: SoundField,
  radiated: readonly number[] | undefined,
): SoundStep {
  const { made, source, certainty } = sound;
  const told = { section: unit.sections[index]!.name, made, radiated, source, certainty };
  if (index === fanIndex) return { ...told, direction: "at the fan", inside: made!.inside, loss: noSoundLoss };
  return index < fanIndex
    ? { ...told, direction: "against the air", inside: field.againstAir[index]!, loss: sound.upstream }
    : { ...told, direction: "with the air", inside: field.withAir[index]!, loss: sound.downstream };
}

/** dB re 1 pW that the walls of each section radiate; undefined for what stands outside the cabinet. */
function radiatedIn(
  unit: Unit,
  room: SoundRoom,
  sections: readonly SectionSound[],
  field: SoundField,
  share: number,
): readonly (readonly number[] | undefined)[] {
  return sections.map(({ made }, index) => {
    const entering = [field.withAir[index]!, field.againstAir[index]!];
    const own = made === undefined ? [] : [raised(made.inside, share * made.uncertainty)];
    return radiatedBy(unit, index, room, sumOf([...entering, ...own]));
  });
}

/** Four walls along the section, floor and roof among them; behind the last section its end wall as well. */
function radiatedBy(
  unit: Unit,
  index: number,
  room: SoundRoom,
  inside: readonly number[],
): readonly number[] | undefined {
  const { width, height } = unit.frame;
  const { length } = unit.sections[index]!.layout;
  if (length === 0) return undefined;
  const isLast = index === unit.sections.length - 1;
  const wall = 2 * (width + height) * length + (isLast ? width * height : 0);
  return octaveBands.map((frequency, band) => {
    const loss = panelSoundLoss(unit.casing.panelThickness, frequency);
    return inside[band]! + wallRadiation(wall, width * height, room.absorption[band]!, loss);
  });
}

function less(levels: readonly number[], loss: readonly number[]): readonly number[] {
  return levels.map((level, band) => level - loss[band]!);
}

function raised(levels: readonly number[], by: number): readonly number[] {
  return levels.map((level) => level + by);
}

/** By energy, band by band. */
function sumOf(sources: readonly (readonly number[] | undefined)[]): readonly number[] {
  return octaveBands.map((_, band) =>
    sumOfLevels(sources.flatMap((levels) => (levels === undefined ? [] : [levels[band]!]))),
  );
}
