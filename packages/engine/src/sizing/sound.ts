import type { Attenuator } from "#component/attenuator";
import { weightedLevel } from "#component/fan-sound";
import { metresPerInch } from "#quantity/inch-pound";
import { printQuantity } from "#quantity/print";
import { type SoundOutlet, soundOf } from "#unit/sound";
import type { DraftSection } from "./draft.ts";
import { runningRatings } from "./trial.ts";
import { choose, type Solved, sectionsOfKind, type Workroom } from "./workroom.ts";

type Way = "intake" | "discharge";

/** Attenuators where the duty limits the sound of intake or discharge: the easiest for the air that does. */
export function settleSound(room: Workroom, solved: Solved): boolean {
  return (["intake", "discharge"] as const).map((way) => settle(room, solved, way)).some(Boolean);
}

function settle(room: Workroom, solved: Solved, way: Way): boolean {
  const limit = room.duty.soundLimits[way];
  const loud = limit === undefined ? undefined : loudest(solved, way);
  if (limit === undefined || loud === undefined || !(loud.weighted > limit)) return false;
  const present = sectionsOfKind(room, "attenuator").find(({ name }) => name === nameOf(way));
  const all = attenuators(room);
  const standing = present && all.find(({ values }) => isBuilt(present, values));
  const longer = all.slice(standing === undefined ? 0 : all.indexOf(standing) + 1);
  const next = longer.find((each) => levelWith(loud, each, standing) <= limit) ?? longer.at(-1);
  const figure = (level: number) => printQuantity(level, "weightedSoundLevel", "ip");
  if (next === undefined) {
    const chosen = "none that takes off more is in the catalogue";
    const because = `${figure(loud.weighted)} at the ${way} with it, against ${figure(limit)}: what is missed is for the duct`;
    room.choices.set(`${nameOf(way)}: limit`, { of: nameOf(way), chosen, because });
    return false;
  }
  const section = present ?? insert(room, way);
  if (section === undefined) return false;
  const without = room.choices.get(`${section.name}: attenuator`)?.because;
  return choose(
    room,
    section,
    next.values,
    without ?? `${figure(loud.weighted)} at the ${way} without it, against ${figure(limit)}`,
  );
}

/** The loudest of all conditions. */
function loudest(solved: Solved, way: Way): SoundOutlet | undefined {
  const outlets = runningRatings(solved).flatMap((rating) => soundOf(solved.unit, rating)?.[way] ?? []);
  return outlets.reduce<SoundOutlet | undefined>(
    (found, each) => (found === undefined || each.weighted > found.weighted ? each : found),
    undefined,
  );
}

/** dB(A) that is left behind another attenuator, as far as its tested losses tell; the solved unit decides. */
function levelWith({ levels }: SoundOutlet, { loss }: Built, standing: Built | undefined): number {
  return weightedLevel(levels.map((level, band) => level - loss[band]! + (standing?.loss[band] ?? 0)));
}

function nameOf(way: Way): string {
  return `${way} attenuator`;
}

interface Built {
  readonly values: { readonly attenuator: string; readonly "baffle length": string };
  /** dB in the octave bands. */
  readonly loss: readonly number[];
}

/** Every record at every tested length: open passages before narrow ones, short before long. */
function attenuators(room: Workroom): readonly Built[] {
  const records = room.catalogue
    .names("attenuator")
    .map((name) => room.catalogue.component("attenuator", name) as Attenuator);
  const open = ({ baffleWidth, passageWidth }: Attenuator) => passageWidth / (passageWidth + baffleWidth);
  return records
    .sort((a, b) => open(b) - open(a))
    .flatMap((record) =>
      record.lengths.map(({ length, insertionLoss }) => ({
        values: {
          attenuator: record.head.name,
          "baffle length": `${Math.round(length / metresPerInch)} in`,
        },
        loss: insertionLoss,
      })),
    );
}

function isBuilt({ values }: DraftSection, built: Built["values"]): boolean {
  return values.attenuator === built.attenuator && values["baffle length"] === built["baffle length"];
}

/** Behind the filters, where the air is clean; behind the fan. */
function insert(room: Workroom, way: Way): DraftSection | undefined {
  if (room.fixed.sections !== undefined) return undefined;
  const { sections } = room.draft;
  const before = sections.findIndex(({ kind }) => kind === (way === "intake" ? "filter bank" : "fan"));
  if (before < 0) return undefined;
  const section: DraftSection = { kind: "attenuator", name: nameOf(way), values: {} };
  sections.splice(before + 1, 0, section);
  return section;
}
