import type { SectionKind } from "@oncethrough/engine/section/contract";
import { sectionKinds } from "@oncethrough/engine/section/kinds";
import { declaredRecord } from "../declared-schema.ts";
import { siUnit } from "../figure-text.ts";
import { largestFlowFields } from "../largest-flow-schema.ts";
import { listOf, number, published, record, text } from "../schema/describe.ts";
import { filterStateRecord, ledgerRecord } from "./ledger-schema.ts";

/** The figures of a state of air. */
export const airStateFigures = {
  dryBulb: number("°C"),
  wetBulb: number("°C, thermodynamic"),
  dewPoint: number("°C; below 0 the frost point"),
  relativeHumidity: number("0 to 1"),
  humidityRatio: number("kg/kg dry air"),
  enthalpy: number("J/kg dry air, without free liquid"),
};

const station = record({
  after: text("name of the section that ends here, or `outdoors`"),
  position: number("m from the cabinet's entry plane; negative before it"),
  ...airStateFigures,
  dryAirFlow: number("kg/s of dry air"),
  freeLiquid: number("kg/s of liquid or ice carried along"),
  coldestFilament: number("°C of the coldest filament"),
  staticPressure: number("Pa against the surroundings"),
  totalPressure: number("Pa against the surroundings"),
  wallPressure: number("Pa of the compartment against its surroundings"),
  velocity: number("m/s, gross, in the clear cabinet"),
  airflow: number("m³/s at the station's own density"),
});

const supply = record({
  ...airStateFigures,
  dryAirFlow: number("kg/s of dry air"),
  actualAirflow: number("m³/s at the supply's density"),
  standardAirflow: number("m³/s of standard air, 0.075 lb/ft³"),
  outsideAirShare: number("0 to 1, by dry air"),
});

const fan = record({
  speed: number("rev/s"),
  electricPower: number("W from the mains"),
  externalStaticNeeded: number("Pa that the duct system needs at this flow"),
  externalStaticHeld: number("Pa that the unit holds there"),
});

/** What is asked and not held. */
export const shortfallFigures = {
  what: text(),
  quantity: text("what wanted and got measure; both in SI"),
  wanted: { type: "number" },
  got: { type: "number" },
};

/** Something to mind; `placed` says where, when it can be in several places. */
export function noteRecord(placed: Readonly<Record<string, object>>): object {
  return record(
    {
      ...placed,
      what: text(),
      weight: { enum: ["information", "caution"] },
      source: text("bibliography key and place"),
    },
    "source",
  );
}

const inSection = { section: text("name of the section, or `unit`") };

/** How a line of arithmetic is published: equation, terms, result. */
export const workingLine = record({
  figure: text("key of the figure"),
  name: text(),
  quantity: text(),
  equation: text("in the symbols of the terms; holds for SI values"),
  terms: listOf(record({ symbol: text(), name: text(), quantity: text(), value: { type: "number" } })),
  result: { type: "number" },
  source: text("bibliography key and place"),
});

/** How a table behind figures is published. */
export const workingTable = record({
  name: text(),
  columns: listOf(record({ name: text("a line break starts a second line"), quantity: text("`words` for text") })),
  lines: listOf(
    { type: "array", items: { type: ["number", "string", "null"] } },
    "SI values; null where there is none",
  ),
  equations: listOf(text(), "what the columns follow"),
  source: text("bibliography key and place"),
});

/** The figures of a kind of section, each with its unit. */
export function figuresOfKind(kind: SectionKind): object {
  return record(
    Object.fromEntries(
      kind.figures.map(({ figure, name, quantity }) => [figure, number(`${name}, ${siUnit(quantity)}`)]),
    ),
    ...kind.figures.map(({ figure }) => figure),
  );
}

function section(): object {
  const kinds = sectionKinds as unknown as readonly SectionKind[];
  return {
    type: "object",
    required: ["name", "kind", "totalPressureLoss", "heatToAir", "waterToAir", "figures"],
    additionalProperties: false,
    properties: {
      name: text("as in the job"),
      kind: { enum: kinds.map((kind) => kind.name) },
      totalPressureLoss: number("Pa; negative where a fan adds pressure"),
      heatToAir: number("W, without what water carries"),
      waterToAir: number("kg/s; negative where it drains away"),
      figures: { type: "object", additionalProperties: { type: "number" } },
    },
    allOf: kinds.map((kind) => ({
      if: { properties: { kind: { const: kind.name } } },
      // biome-ignore lint/suspicious/noThenProperty: a word of JSON Schema
      then: { properties: { figures: figuresOfKind(kind) } },
    })),
  };
}

const condition = () =>
  record(
    {
      key: text("as --condition takes it"),
      name: text(),
      season: { enum: ["cooling", "heating"] },
      flow: { enum: ["flow held", "speed held", "fan stopped"] },
      fansOut: number("fans that stand while the others run"),
      filterLoading: number("0 clean to 1 at change-out"),
      barometricPressure: number("Pa absolute"),
      solved: { type: "boolean" },
      reason: text("why it is not solved; empty when it is"),
      outdoors: record(airStateFigures),
      supply,
      fan,
      cooling: number("W that the cooling coils take from the air: what chilled water has to bring"),
      heating: number("W that the heating coils give to the air: what steam and heating water have to bring"),
      stations: listOf(station, "in airflow order"),
      sections: listOf(section(), "in airflow order"),
      shortfalls: listOf(record({ ...inSection, ...shortfallFigures }), "what is asked and not held"),
      notes: listOf(noteRecord(inSection)),
      declared: listOf(
        declaredRecord({ section: text("name of the section") }),
        "suppliers' declared ratings beside ours",
      ),
      working: record({ section: text(), lines: listOf(workingLine), tables: listOf(workingTable) }),
      ledger: ledgerRecord,
      filterStates: listOf(filterStateRecord, "with filters clean, half loaded and at change-out"),
    },
    "declared",
    "working",
    "ledger",
    "filterStates",
  );

/** The published schema of `oncethrough rate --json`. */
export function rateSchema(): object {
  return published("rate", "A solved unit, as printed by `oncethrough rate --json`; all numbers in SI units", {
    ...record({
      format: { const: "oncethrough rating 1" },
      tag: text("of the unit"),
      conditions: listOf(condition(), "one entry for each condition that was asked for"),
      largestFlows: listOf(
        record({
          condition: text("key of the condition whose weather it is"),
          name: text("of it"),
          ...largestFlowFields,
        }),
        "filters clean and the fan as fast as any condition of the job asks",
      ),
    }),
  });
}
