import type { Attenuator } from "#component/attenuator";
import { metresPerInch } from "#quantity/inch-pound";
import { printQuantity } from "#quantity/print";
import { soundOf } from "#unit/sound";
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
  if (limit === undefined) return false;
  const level = loudest(solved, way);
  if (!(level > limit)) return false;
  const present = sectionsOfKind(room, "attenuator").find(({ name }) => name === nameOf(way));
  const next = attenuators(room).find(({ rank }) => present === undefined || rank > rankOf(room, present));
  if (next === undefined) return false;
  const section = present ?? insert(room, way);
  if (section === undefined) return false;
  const because = `${printQuantity(level, "weightedSoundLevel", "ip")} at the ${way} without it, against ${printQuantity(limit, "weightedSoundLevel", "ip")}`;
  return choose(
    room,
    section,
    next.values,
    present === undefined ? because : (room.choices.get(`${section.name}: attenuator`)?.because ?? because),
  );
}

function loudest(solved: Solved, way: Way): number {
  return Math.max(
    Number.NEGATIVE_INFINITY,
    ...runningRatings(solved).map((rating) => soundOf(solved.unit, rating)?.[way].weighted ?? Number.NEGATIVE_INFINITY),
  );
}

function nameOf(way: Way): string {
  return `${way} attenuator`;
}

interface Built {
  readonly rank: number;
  readonly values: { readonly attenuator: string; readonly "baffle length": string };
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
      record.lengths.map(({ length }) => ({
        attenuator: record.head.name,
        "baffle length": `${Math.round(length / metresPerInch)} in`,
      })),
    )
    .map((values, rank) => ({ rank, values }));
}

function rankOf(room: Workroom, { values }: DraftSection): number {
  const found = attenuators(room).find(
    (each) => each.values.attenuator === values.attenuator && each.values["baffle length"] === values["baffle length"],
  );
  return found?.rank ?? -1;
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
