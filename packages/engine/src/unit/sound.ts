import { endReflection, sumOfLevels, weightedLevel } from "#component/fan-sound";
import { inOctaveBands, panelSoundLoss, wallRadiation, wallSoundAbsorption } from "#component/sound-path";
import type { SectionSound, SoundRoom } from "#section/contract";
import type { FanDesign } from "#section/fan/design";
import type { FanSectionRating } from "#section/fan/rate";
import { type FanSectionSound, fanSectionSound } from "#section/fan/sound";
import { octaveBands } from "#standard/fan-sound";
import { fanHousingAttenuation, pathUncertainty } from "#standard/sound-path";
import type { UnitRating } from "./rating.ts";
import type { Unit, UnitSection } from "./unit.ts";
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
  /** dB re 1 pW in the section where the sound comes in; what the section takes off; what it makes itself. */
  readonly inside: readonly number[];
  readonly loss: readonly number[];
  readonly made: readonly number[] | undefined;
  /** dB re 1 pW that its walls radiate; undefined for what stands outside the cabinet. */
  readonly radiated: readonly number[] | undefined;
  readonly source: string;
  readonly certainty: string;
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
  readonly fan: FanSectionSound;
  /** In airflow order. */
  readonly steps: readonly SoundStep[];
}

/** Whether a limit is held: certain only where the uncertainty does not reach it. */
export type LimitOutcome = "held" | "not certain" | "exceeded";

/** Holds an A-weighted sum against its limit, dB(A), with the uncertainty on the careful side both ways. */
export function limitOutcome({ weighted, uncertainty }: SoundOutlet, limit: number): LimitOutcome {
  if (weighted + uncertainty <= limit) return "held";
  return weighted - uncertainty > limit ? "exceeded" : "not certain";
}

/** Solid angle over π into which an intake radiates: flush in a wall. */
const intakeAngle = 2;
const silent: readonly number[] = octaveBands.map(() => 0);

/**
 * Sound power at the intake, at the discharge, at the return opening and through the casing: the fan's own sound carried
 * both ways through the sections. Undefined when the fan stands or adds no pressure.
 */
export function soundOf(unit: Unit, rating: UnitRating): UnitSound | undefined {
  const fanIndex = sectionWithRole(unit, "fan");
  const design = unit.sections[fanIndex]?.design as FanDesign;
  const fan = fanSectionSound(design, rating.sections[fanIndex] as FanSectionRating);
  if (fan === undefined) return undefined;
  const room = roomOf(unit);
  const before = walkAgainst(unit, rating, room, fanIndex, fan.inlet);
  const behind = walkWith(unit, rating, room, fanIndex, fan.outlet);
  const steps = [...before.steps.reverse(), fanStep(unit, fanIndex, room, design, fan), ...behind.steps];
  const reflection = endReflectionOf(before.openingArea ?? unit.frame.width * unit.frame.height);
  const airway = Math.hypot(fan.uncertainty, pathUncertainty.airway);
  return {
    intake: outlet(less(before.levels, reflection), airway),
    discharge: outlet(behind.levels, airway),
    casing: outlet(
      added(steps.flatMap(({ radiated }) => (radiated === undefined ? [] : [radiated]))),
      Math.hypot(fan.uncertainty, pathUncertainty.casing),
    ),
    returnOpening: before.atReturn === undefined ? undefined : outlet(before.atReturn, airway),
    endReflection: reflection,
    fan,
    steps,
  };
}

function outlet(levels: readonly number[], uncertainty: number): SoundOutlet {
  return { levels, weighted: weightedLevel(levels), uncertainty };
}

function roomOf(unit: Unit): SoundRoom {
  const { innerSkin, panelThickness } = unit.casing;
  return {
    frame: unit.frame,
    absorption: inOctaveBands((frequency) => wallSoundAbsorption(innerSkin, panelThickness, frequency)),
  };
}

function endReflectionOf(area: number): readonly number[] {
  return inOctaveBands((frequency) => endReflection(area, frequency, intakeAngle));
}

interface Walked {
  readonly steps: SoundStep[];
  readonly levels: readonly number[];
  readonly atReturn: readonly number[] | undefined;
  readonly openingArea: number | undefined;
}

/** From the fan's inlet to the intake. */
function walkAgainst(
  unit: Unit,
  rating: UnitRating,
  room: SoundRoom,
  fanIndex: number,
  start: readonly number[],
): Walked {
  const steps: SoundStep[] = [];
  let levels = start;
  let atReturn: readonly number[] | undefined;
  let openingArea: number | undefined;
  for (let index = fanIndex - 1; index >= 0; index--) {
    const section = unit.sections[index]!;
    const sound = sectionSound(section, rating, index, room);
    const loss = sound?.upstream ?? silent;
    steps.push(stepOf(unit, section, room, "against the air", levels, loss, sound));
    if (sound?.toReturn !== undefined) atReturn = less(levels, sound.toReturn);
    levels = passed(levels, loss, sound?.made);
    openingArea = sound?.openingArea ?? openingArea;
  }
  return { steps, levels, atReturn, openingArea };
}

/** From the fan's outlet to the duct. */
function walkWith(unit: Unit, rating: UnitRating, room: SoundRoom, fanIndex: number, start: readonly number[]): Walked {
  const steps: SoundStep[] = [];
  let levels = start;
  for (let index = fanIndex + 1; index < unit.sections.length; index++) {
    const section = unit.sections[index]!;
    const sound = sectionSound(section, rating, index, room);
    const loss = sound?.downstream ?? silent;
    steps.push(stepOf(unit, section, room, "with the air", levels, loss, sound));
    levels = passed(levels, loss, sound?.made);
  }
  return { steps, levels, atReturn: undefined, openingArea: undefined };
}

function sectionSound(
  section: UnitSection,
  rating: UnitRating,
  index: number,
  room: SoundRoom,
): SectionSound | undefined {
  return section.behaviour.sound?.(section.design, rating.sections[index]!, room);
}

function stepOf(
  unit: Unit,
  section: UnitSection,
  room: SoundRoom,
  direction: SoundStep["direction"],
  inside: readonly number[],
  loss: readonly number[],
  sound: SectionSound | undefined,
): SoundStep {
  const heard = sound?.made === undefined ? inside : added([inside, sound.made]);
  return {
    section: section.name,
    direction,
    inside,
    loss,
    made: sound?.made,
    radiated: radiatedBy(unit, section, room, heard),
    source: sound?.source ?? "common-practice all sound is taken to pass",
    certainty: sound?.certainty ?? "nothing taken off",
  };
}

/** The cabinet around a housed fan holds what its inlets give off and what comes through its housing; around wheels, all. */
function fanStep(unit: Unit, index: number, room: SoundRoom, design: FanDesign, fan: FanSectionSound): SoundStep {
  const section = unit.sections[index]!;
  const shell = design.housed ? less(fan.outlet, fanHousingAttenuation.decibels) : fan.outlet;
  const inside = added([fan.inlet, shell]);
  return {
    section: section.name,
    direction: "at the fan",
    inside,
    loss: silent,
    made: undefined,
    radiated: radiatedBy(unit, section, room, inside),
    source: fan.source,
    certainty: fan.certainty,
  };
}

/** Four walls along the section, floor and roof among them; behind the last section its end wall as well. */
function radiatedBy(
  unit: Unit,
  section: UnitSection,
  room: SoundRoom,
  inside: readonly number[],
): readonly number[] | undefined {
  const { width, height } = unit.frame;
  const { length } = section.layout;
  if (length === 0) return undefined;
  const isLast = section === unit.sections.at(-1);
  const wall = 2 * (width + height) * length + (isLast ? width * height : 0);
  return octaveBands.map((frequency, band) => {
    const loss = panelSoundLoss(unit.casing.panelThickness, frequency);
    return inside[band]! + wallRadiation(wall, width * height, room.absorption[band]!, loss);
  });
}

function less(levels: readonly number[], loss: readonly number[]): readonly number[] {
  return levels.map((level, band) => level - loss[band]!);
}

function passed(
  levels: readonly number[],
  loss: readonly number[],
  made: readonly number[] | undefined,
): readonly number[] {
  const left = less(levels, loss);
  return made === undefined ? left : added([left, made]);
}

function added(sources: readonly (readonly number[])[]): readonly number[] {
  return octaveBands.map((_, band) => sumOfLevels(sources.map((levels) => levels[band]!)));
}
