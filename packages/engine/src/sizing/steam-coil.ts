import { metresPerInch } from "#quantity/inch-pound";
import { printQuantity } from "#quantity/print";
import type { SectionRating } from "#section/contract";
import type { DraftSection, DraftValue } from "./draft.ts";
import { frameOf } from "./intake.ts";
import { indexOf, runningRatings, tryValues } from "./trial.ts";
import { against, choose, type Solved, sectionsOfKind, type Workroom } from "./workroom.ts";

const steamKinds = ["steam coil with face and bypass", "steam coil"] as const;

/** Rows and fins per inch that are looked at, little surface first. */
const surfaces = [1, 2, 3, 4].flatMap((rows) => [6, 8, 10, 12].map((fins) => ({ rows, fins })));

/** What the first walk needs: lanes by the height, pumped loops where water sees frost. */
export function chooseHeatingFirst(room: Workroom): void {
  const { height } = frameOf(room.draft);
  for (const section of sectionsOfKind(room, "steam coil with face and bypass")) {
    const lanes = Math.max(1, Math.min(8, Math.round(height / 0.8)));
    choose(
      room,
      section,
      { lanes },
      `lanes of about ${printQuantity(height / lanes, "length", "ip")} with their channels`,
    );
    choose(room, section, { rows: 1, fins: "8 per in" }, "to begin with");
  }
  for (const section of sectionsOfKind(room, "steam coil")) {
    choose(room, section, { control: "two-position valve" }, "steam full on in freezing air: no stall in the coil");
    choose(room, section, { rows: 1, fins: "8 per in" }, "to begin with");
  }
  for (const section of sectionsOfKind(room, "hot-water coil")) {
    choose(room, section, { control: "pumped loop" }, "flow in every tube at every load, so that no tube freezes");
    choose(room, section, { rows: 2, fins: "8 per in" }, "to begin with");
  }
}

/** The least surface that reaches what every winter condition asks. More surface than that makes steam stall sooner. */
export function settleSteamCoils(room: Workroom, solved: Solved): boolean {
  let changed = false;
  for (const section of sectionsOfKind(room, ...steamKinds)) {
    changed = settleCoil(room, solved, section) || changed;
  }
  return changed;
}

function settleCoil(room: Workroom, solved: Solved, section: DraftSection): boolean {
  const index = indexOf(solved.unit, section.name);
  const winter = runningRatings(solved, "heating");
  const key = `${section.name}: capacity`;
  const { steamRows, steamFins } = room.limits;
  // A coil that was chosen and does stays, or it would go to and fro with the fan's heat.
  const present = tryValues(room, solved, index, section.values, winter);
  if (room.chosen.has(section.name) && present?.every(({ shortfalls }) => shortfalls.length === 0)) return false;
  room.chosen.add(section.name);
  const built = surfaces.filter(({ rows, fins }) => rows <= steamRows && fins / metresPerInch <= steamFins);
  for (const { rows, fins } of built) {
    const values: Record<string, DraftValue> = { ...section.values, rows, fins: `${fins} per in` };
    const trials = tryValues<SectionRating>(room, solved, index, values, winter);
    if (trials === undefined || trials.some((trial) => trial.shortfalls.length > 0)) continue;
    room.obstacles.delete(key);
    const face = Math.max(...trials.map((trial) => trial.rating.faceVelocity));
    const because = `the least surface that holds every winter condition; ${against("face velocity", face, room.limits.heatingVelocity, "velocity")}`;
    return choose(room, section, { rows, fins: `${fins} per in` }, because);
  }
  const most = built.at(-1)!;
  room.obstacles.set(
    key,
    `no ${section.kind} up to ${most.rows} rows of ${most.fins} fins per inch reaches the winter set point`,
  );
  return choose(room, section, { rows: most.rows, fins: `${most.fins} per in` }, "the most surface that is built");
}
