import type { UnitSection } from "#unit/unit";
import { type Machine, machineRule, type Rule } from "../contract.ts";
import { inches } from "../inch-pound-limits.ts";
import { coilKinds } from "../neighbour.ts";

type Door = { readonly doorWidth: number; readonly doorHeight: number; readonly light: boolean };

function neighbours({ unit, index }: Machine): readonly UnitSection[] {
  return [unit.sections[index - 1], unit.sections[index + 1]].filter((each) => each !== undefined);
}

/** Doors, access and room for service. Spray gaps are washed through hatches; a walk-in access is entered. */
export const serviceRules: readonly Rule[] = [
  machineRule<Door & { readonly length: number }>({
    id: "clear length of an access",
    isChosen: true,
    covers: ["CAS-15"],
    protects: "who works inside",
    measures: "clear length of a walk-in access",
    quantity: "length",
    sense: "at least",
    limit: inches(18),
    source: "from-memory 18 to 24 in",
    certainty: "from memory",
    severity: "nuisance",
    remedy: "a longer access",
    mends: [{ at: "section", field: "length", way: "more" }],
    of: ["access"],
    value: ({ design }) => design.length,
  }),
  machineRule<Door>({
    id: "access door width",
    isChosen: true,
    covers: ["CAS-14"],
    protects: "who enters",
    measures: "clear width of the door",
    quantity: "length",
    sense: "at least",
    limit: inches(18),
    source: "hospital-master-specification doors 18 in wide; a campus has about 20, a guide specification 36 × 18",
    certainty: "read",
    severity: "nuisance",
    remedy: "a wider door",
    mends: [{ at: "section", field: "doorWidth", way: "more" }],
    of: ["access"],
    value: ({ design }) => design.doorWidth,
  }),
  machineRule<Door>({
    id: "access lit",
    covers: ["CAS-16"],
    protects: "who works inside",
    measures: "a light in the access",
    quantity: "flag",
    sense: "at least",
    limit: 1,
    source: "hospital-master-specification light and receptacle in each section",
    certainty: "read",
    severity: "nuisance",
    remedy: "a light with a receptacle",
    mends: [{ at: "section", field: "light", way: "other" }],
    of: ["access"],
    value: ({ design }) => (design.light ? 1 : 0),
  }),
  machineRule({
    id: "doors open against the pressure",
    covers: ["CAS-14"],
    protects: "people from a door that flies open or holds them in",
    measures: "doors that the wall pressure pushes open",
    quantity: "count",
    sense: "at most",
    limit: 0,
    source: "campus-specification doors swing against the air pressure",
    certainty: "read",
    severity: "hazard",
    remedy: "a door that opens the other way; the fan stopped before any door is opened",
    mends: [{ at: { kind: "access" }, field: "swing", way: "other" }],
    of: "every section",
    value: ({ weighing: { arrangement }, unit, index }) => {
      const name = unit.sections[index]?.name;
      if (!arrangement.swings.some(({ section }) => section === name)) return undefined;
      return arrangement.notices.filter(({ part, what }) => part === name && what.includes("push it open")).length;
    },
  }),
  machineRule({
    id: "filters reached by a door",
    covers: ["FLT-15"],
    protects: "who changes the filters",
    measures: "a door in the filter section or beside it",
    quantity: "flag",
    sense: "at least",
    limit: 1,
    source: "hospital-master-specification doors at the filters",
    certainty: "read",
    severity: "shortfall",
    remedy: "a longer filter section with a door, or an access beside it",
    mends: [{ at: "section", field: "length", way: "more" }],
    of: ["filter bank"],
    value: (at) => {
      const names = [at.unit.sections[at.index]!, ...neighbours(at)].map(({ name }) => name);
      return at.weighing.arrangement.swings.some(({ section }) => names.includes(section)) ? 1 : 0;
    },
  }),
  machineRule({
    id: "coil reached from one side",
    covers: ["CAS-15"],
    protects: "coils from dirt that nobody reaches",
    measures: "an access, a spray gap or a door before or behind the coil",
    quantity: "flag",
    sense: "at least",
    limit: 1,
    source: "hospital-master-specification doors at each coil",
    certainty: "read",
    severity: "shortfall",
    remedy: "an access, or at least a spray gap with a hatch, beside the coil",
    mends: [],
    of: coilKinds,
    value: (at) => {
      const beside = neighbours(at);
      const doors = at.weighing.arrangement.swings;
      return beside.some(({ kind, name }) => kind === "spray gap" || doors.some(({ section }) => section === name))
        ? 1
        : 0;
    },
  }),
  machineRule({
    id: "room to draw the coil",
    covers: ["CLG-16", "COD-09"],
    protects: "the day on which a coil is exchanged",
    measures: "room that the site gives beside the unit on its service side",
    quantity: "length",
    sense: "at least",
    limit: ({ weighing: { arrangement }, unit, index }) => {
      const name = unit.sections[index]?.name;
      const pull = arrangement.spaces.find(({ section, use }) => section === name && use === "coil pull");
      return (pull?.size.y ?? Number.NaN) / 1000;
    },
    limitWords: "the coil with its headers, and a foot",
    source: "campus-specification 3 ft around the unit and room to pull coils, shown on drawings",
    certainty: "read",
    severity: "shortfall",
    remedy: "the unit turned or moved, or coils in shorter pieces",
    mends: [{ at: "duty", field: "limits.serviceSide", way: "more" }],
    of: coilKinds,
    missing: "the duty does not give `service side` under `limits`",
    value: ({ duty }) => duty.limits.serviceSide ?? Number.NaN,
  }),
  machineRule({
    id: "working space before the unit",
    covers: ["COD-01", "COD-03", "COD-04", "COD-09"],
    protects: "electricians and fitters",
    measures: "room that the site gives beside the unit on its service side",
    quantity: "length",
    sense: "at least",
    limit: ({ weighing: { arrangement } }) =>
      Math.max(
        inches(36),
        ...arrangement.spaces.filter(({ use }) => use !== "coil pull").map(({ size }) => size.y / 1000),
      ),
    limitWords: "3 ft, the level space before doors, and the electrical working space at this voltage",
    source:
      "campus-specification 3 ft; international-mechanical-code 306.1; nfpa-70 110.26(A): the code in force decides",
    certainty: "read",
    severity: "hazard",
    remedy: "the unit moved or turned, the disconnect elsewhere",
    mends: [{ at: "duty", field: "limits.serviceSide", way: "more" }],
    of: "unit",
    missing: "the duty does not give `service side` under `limits`",
    value: ({ duty }) => duty.limits.serviceSide ?? Number.NaN,
  }),
  machineRule<{ readonly motorPower: number }>({
    id: "way out for the motor",
    covers: ["FAN-24"],
    protects: "the day on which a motor is exchanged",
    measures: "clear width of the widest door at the fan",
    quantity: "length",
    sense: "at least",
    limit: inches(30),
    source: "hospital-master-specification fan and motor pass a 30 in door",
    certainty: "read",
    isGuide: true,
    severity: "nuisance",
    remedy: "a wider door, or a bolted panel beside the fan",
    mends: [{ at: { kind: "access" }, field: "doorWidth", way: "more" }],
    of: ["fan"],
    value: (at) => {
      const names = [at.unit.sections[at.index]!, ...neighbours(at)].map(({ name }) => name);
      const doors = at.weighing.arrangement.swings.filter(({ section }) => names.includes(section));
      return Math.max(0, ...doors.map(({ radius }) => radius / 1000));
    },
  }),
];
