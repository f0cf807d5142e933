import { metresPerInch as inch } from "#quantity/inch-pound";
import { printQuantity } from "#quantity/print";
import { against, choose, chooseCasing, inchesUp, sectionsOfKind, type Workroom } from "./workroom.ts";

/** Chooses what needs no solution: media, materials, lengths, openings. The cross-section is known then. */
export function chooseFirst(room: Workroom): void {
  chooseFilters(room);
  chooseBuild(room);
  chooseCoils(room);
  for (const section of sectionsOfKind(room, "access")) {
    choose(
      room,
      section,
      { length: inchesUp(room.limits.accessLength) },
      "a person walks in, cleans and closes the door",
    );
  }
  for (const section of sectionsOfKind(room, "spray gap")) {
    choose(room, section, { length: "12 in" }, "the coil face is washed through hatches, not entered");
  }
  for (const section of sectionsOfKind(room, "steam humidifier")) {
    choose(
      room,
      section,
      { dispersion: "typical insulated tube panel 3 in" },
      "short absorption, little heat into the air",
    );
  }
}

/** What filters are taken, and what after them where the unit's pressure is limited. */
export const filters: readonly {
  readonly values: Readonly<Record<string, string | undefined>>;
  readonly because: string;
}[] = [
  {
    values: { medium: "typical MERV 14 rigid 12 in", prefilter: "typical MERV 8 pleated 2 in" },
    because: "assumed: a prefilter before every wetted surface, a final filter as laboratories commonly ask",
  },
  {
    values: { medium: "typical MERV 14 V-bank 12 in", prefilter: "typical MERV 8 pleated 2 in" },
    because: "as laboratories commonly ask, of much medium: the unit's pressure is limited",
  },
  {
    values: { medium: "typical MERV 13 pleated 4 in", prefilter: undefined },
    because: "one stage, changed at 1 in.wg: the unit's pressure is limited",
  },
];

function chooseFilters(room: Workroom): void {
  for (const section of sectionsOfKind(room, "filter bank")) {
    choose(
      room,
      section,
      { ...filters[room.limits.easyFilters]!.values, rack: "flat" },
      filters[room.limits.easyFilters]!.because,
    );
  }
}

/** Corrosivity classes of the coast and of industry, ISO 12944. */
const harsh = ["C4", "C5"];

function chooseBuild(room: Workroom): void {
  const { site, winter } = room.duty;
  const isHarsh = harsh.includes(site.corrosionClass);
  const isCold = winter.dryBulb < -18 && !room.limits.relaxed;
  chooseCasing(
    room,
    { "connection hand": "right", "panel thickness": isCold ? "3 in" : "2 in" },
    isCold
      ? `thicker panels for a winter day of ${printQuantity(winter.dryBulb, "temperature", "ip")}`
      : "assumed: pipes and doors on the right, seen in airflow",
  );
  chooseCasing(room, { "leakage class": room.limits.leakageClass }, "the owner's leakage class");
  const { supportSpacing } = room.limits;
  if (Number.isFinite(supportSpacing)) {
    const spacing = `${Math.floor(supportSpacing / inch + 1e-6)} in`;
    chooseCasing(room, { "support spacing": spacing }, "as far apart as the owner lets supports stand");
  }
  if (isHarsh) {
    chooseCasing(
      room,
      { "inner metal": "stainless steel 304", finish: "epoxy and polyurethane" },
      `corrosion class ${site.corrosionClass}`,
    );
    for (const section of sectionsOfKind(room, "intake hood")) {
      choose(
        room,
        section,
        { screen: "typical stainless bird screen 1/2 in" },
        `corrosion class ${site.corrosionClass}`,
      );
    }
  }
}

function chooseCoils(room: Workroom): void {
  const isHarsh = harsh.includes(room.duty.site.corrosionClass);
  for (const section of sectionsOfKind(room, "chilled-water coil")) {
    if (isHarsh) {
      choose(
        room,
        section,
        { "fin material": "epoxy-coated aluminium" },
        `corrosion class ${room.duty.site.corrosionClass}`,
      );
    }
  }
}

/** Doors and hatches no higher than the cabinet. */
export function chooseDoors(room: Workroom, frame: { readonly height: number }): void {
  const most = Math.floor((frame.height - 4 * inch) / inch);
  for (const section of sectionsOfKind(room, "access")) {
    if (most < 72) choose(room, section, { "door height": `${most} in` }, "as high as the cabinet takes");
  }
  for (const section of sectionsOfKind(room, "spray gap")) {
    if (most < 36) choose(room, section, { "hatch height": `${most} in` }, "as high as the cabinet takes");
  }
}

/** Sizes the discharge opening for the largest airflow. */
export function chooseDischarge(
  room: Workroom,
  frame: { readonly width: number; readonly height: number },
  airflow: number,
): void {
  const limit = room.limits.dischargeVelocity;
  for (const section of sectionsOfKind(room, "discharge plenum")) {
    const area = airflow / limit;
    const height = Math.min(frame.height - 6 * inch, Math.max(12 * inch, Math.sqrt(area / 1.7)));
    const width = Math.min(frame.width - 6 * inch, area / height);
    const steps = (metres: number) => Math.ceil(metres / inch / 2 - 1e-6) * 2 * inch;
    const velocity = airflow / (steps(width) * steps(height));
    choose(
      room,
      section,
      { "outlet width": inchesUp(width, 2), "outlet height": inchesUp(height, 2), length: "36 in" },
      against("velocity in the opening", velocity, limit, "velocity"),
    );
  }
}
