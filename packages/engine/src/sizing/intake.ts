import { type Louver, louverFreeArea } from "#component/louver";
import { metresPerInch as inch } from "#quantity/inch-pound";
import { printQuantity } from "#quantity/print";
import { actualAirflow } from "#section/station";
import type { Draft, DraftValue } from "./draft.ts";
import { against, choose, inchesUp, type Solved, sectionsOfKind, type Workroom } from "./workroom.ts";

/** The damper lines that intakes take: blades that close tight against a fan's suction. */
const outsideDamper = "typical airfoil opposed class 1A";
const shutOffDamper = "typical airfoil parallel class 1A";

/** The louvers that may be taken: the user's own, or those of the catalogue that drain. */
export function louverRecords(room: Workroom): readonly Louver[] {
  const fixed = sectionsOfKind(room, "louver")[0]?.values.louver;
  const names = typeof fixed === "string" ? [fixed] : room.catalogue.names("louver");
  const records = names.map((name) => room.catalogue.component("louver", name) as Louver);
  const draining = records.filter((louver) => louver.drainable);
  return draining.length > 0 ? draining : records;
}

/** m, clear sides of the cabinet as chosen so far. */
export function frameOf(draft: Draft): { readonly width: number; readonly height: number } {
  return { width: metresOf(draft.casing.width!), height: metresOf(draft.casing.height!) };
}

/** m of inches as typed by sizing itself. */
export function metresOf(typed: DraftValue): number {
  return Number.parseFloat(String(typed)) * inch;
}

/** Chooses louver, dampers and filters for a cross-section. */
export function chooseIntake(
  room: Workroom,
  frame: { readonly width: number; readonly height: number },
  airflow: number,
): void {
  chooseLouver(room, frame, airflow);
  chooseShutOffDamper(room, frame, airflow);
  chooseMixingBox(room, frame, airflow);
}

function chooseLouver(
  room: Workroom,
  frame: { readonly width: number; readonly height: number },
  airflow: number,
): void {
  for (const section of sectionsOfKind(room, "louver")) {
    const share = (louver: Louver) =>
      airflow / louverFreeArea(louver, frame.width, frame.height) / louver.onsetVelocity;
    const kept = louverRecords(room).filter((louver) => share(louver) <= room.limits.louverOnsetShare);
    // Of those that keep the rain out, the one that costs the fan least.
    const loss = (louver: Louver) =>
      louver.lossCoefficient * (airflow / louverFreeArea(louver, frame.width, frame.height)) ** 2;
    const [louver] = kept.sort((a, b) => loss(a) - loss(b));
    if (louver === undefined) continue;
    choose(
      room,
      section,
      { louver: louver.head.name },
      `free velocity ${printQuantity(share(louver), "share", "ip")} of that at which water begins to come through, against ${printQuantity(room.limits.louverOnsetShare, "share", "ip")}`,
    );
  }
}

function chooseShutOffDamper(
  room: Workroom,
  frame: { readonly width: number; readonly height: number },
  airflow: number,
): void {
  for (const section of sectionsOfKind(room, "shut-off damper")) {
    const width = frame.width - 6 * inch;
    const height = Math.min(frame.height - 6 * inch, Math.max(12 * inch, airflow / room.limits.damperVelocity / width));
    const face = against("face velocity", airflow / (width * height), room.limits.damperVelocity, "velocity");
    choose(room, section, { damper: shutOffDamper, width: inchesUp(width, 2), height: inchesUp(height, 2) }, face);
  }
}

/** Outside and return damper at the velocity that gives them authority; angles follow when the unit is solved. */
export function chooseMixingBox(
  room: Workroom,
  frame: { readonly width: number; readonly height: number },
  airflow: number,
): void {
  for (const section of sectionsOfKind(room, "mixing box")) {
    const share = room.duty.outsideAirShare;
    const outside = (airflow * share) / room.limits.damperVelocity;
    const width = Math.min(frame.width - 6 * inch, Math.max(18 * inch, Math.sqrt(1.5 * outside)));
    const height = Math.min(frame.height - 6 * inch, outside / width);
    const back = (airflow * (1 - share)) / room.limits.damperVelocity;
    const along = Math.max(12 * inch, Math.sqrt(0.45 * back));
    const across = Math.max(12 * inch, Math.min(frame.width - 6 * inch, back / along));
    const length = Math.max(48 * inch, along + 18 * inch);
    const face = `face velocity ${printQuantity(room.limits.damperVelocity, "velocity", "ip")} for authority over the share`;
    choose(
      room,
      section,
      {
        "outside air": {
          ...(section.values["outside air"] as object | undefined),
          damper: outsideDamper,
          width: inchesUp(width, 2),
          height: inchesUp(height, 2),
        },
        "return air": {
          ...(section.values["return air"] as object | undefined),
          damper: outsideDamper,
          width: inchesUp(across, 2),
          height: inchesUp(along, 2),
          place: "top",
        },
      },
      face,
    );
    choose(
      room,
      section,
      { length: inchesUp(length, 2) },
      "room for the return damper and to enter between dampers and filters",
    );
    const freezes = room.duty.winter.dryBulb < 0 && sectionsOfKind(room, "shut-off damper").length === 0;
    choose(
      room,
      section,
      { control: freezes ? "actuated" : "hand set" },
      freezes ? "outside air is shut off in a winter stop, and the share held at every flow" : "no frost to shut out",
    );
  }
}

/** Clean filters at the speed that dirty ones need let in more than the duty asks; to begin with, as much as this. */
const excess = 1.08;

/** Sizes the hood's opening for the largest flow that the solved conditions draw in. */
export function settleHood(room: Workroom, { ratings }: Solved): boolean {
  const frame = frameOf(room.draft);
  const flow =
    excess *
    Math.max(0, ...ratings.filter((each) => each.operation.fansRunning).map(({ outdoors }) => actualAirflow(outdoors)));
  const isSnowy = room.duty.site.snow === "heavy" || room.duty.site.snow === "drifting";
  const limit = isSnowy ? room.limits.hoodVelocityInSnow : room.limits.hoodVelocity;
  let changed = false;
  for (const section of sectionsOfKind(room, "intake hood")) {
    // It never sinks again: what one round needs, the next by a hair less, would go to and fro.
    const before = metresOf(section.values.projection ?? "18 in");
    const projection = Math.max(before, flow / limit / frame.width);
    const velocity = flow / (Math.ceil(projection / inch / 2) * 2 * inch * frame.width);
    changed =
      choose(
        room,
        section,
        { projection: inchesUp(projection, 2) },
        against("air rises through the opening at", velocity, limit, "velocity"),
      ) || changed;
  }
  return changed;
}
