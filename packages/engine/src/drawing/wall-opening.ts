import type { Opening } from "#section/contract";
import type { Unit, UnitSection } from "#unit/unit";

/** An opening of the cabinet in the cabinet's own millimetres. */
export interface WallOpening {
  readonly key: string;
  readonly section: string;
  readonly air: Opening["air"];
  readonly face: Opening["face"];
  readonly hood: Opening["hood"];
  /** mm: along the airflow on top and bottom, above the floor on entry and exit. */
  readonly from: number;
  readonly to: number;
}

/** The openings that the sections have, and the whole ends where the first and the last section say nothing. */
export function wallOpenings(unit: Unit): readonly WallOpening[] {
  const own = unit.sections.flatMap((section) =>
    (section.layout.openings ?? []).map((opening, index) => placed(section, opening, index)),
  );
  const height = 1000 * unit.frame.height;
  const first = unit.sections[0];
  const last = unit.sections.at(-1);
  if (first !== undefined && !own.some((opening) => opening.air === "outside")) {
    own.unshift({
      key: "intake",
      section: first.name,
      air: "outside",
      face: "entry",
      hood: undefined,
      from: 0,
      to: height,
    });
  }
  if (last !== undefined && !own.some((opening) => opening.air === "supply")) {
    const [from, to] = [0.3 * height, 0.7 * height];
    own.push({ key: "discharge", section: last.name, air: "supply", face: "exit", hood: undefined, from, to });
  }
  return own;
}

function placed(section: UnitSection, opening: Opening, index: number): WallOpening {
  const isAlong = opening.face === "top" || opening.face === "bottom";
  const shift = isAlong ? 1000 * section.start : 0;
  return {
    key: `${section.name}-opening-${index}`,
    section: section.name,
    air: opening.air,
    face: opening.face,
    hood: opening.hood,
    from: shift + 1000 * opening.from,
    to: shift + 1000 * opening.to,
  };
}
