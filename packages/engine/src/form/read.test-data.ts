import { choice, component, factor, flag, group, integer, list, quantity, text, variant } from "./field.ts";
import type { ReadContext } from "./reading.ts";

interface Wheel {
  readonly diameter: number;
}

/** A small catalogue. */
export const wheels: Readonly<Record<string, Wheel>> = {
  "wheel 27": { diameter: 0.7 },
  "wheel 30": { diameter: 0.76 },
};
/** What the reader may ask of it. */
export const context: ReadContext = {
  component: (family, name) => (family === "wheel" && Object.hasOwn(wheels, name) ? wheels[name] : undefined),
  componentNames: () => Object.keys(wheels),
};

/** Fields of every type. */
export const fields = {
  tag: text({ meaning: "name of the unit", longest: 20 }),
  supplyAirflow: quantity("airflow", { meaning: "air to the duct", minimum: "100 cfm", maximum: "100,000 cfm" }),
  site: group(
    {
      altitude: quantity("length", { meaning: "height above the sea", default: "0 ft" }),
      roof: flag({ meaning: "on a roof", default: true }),
    },
    { meaning: "where it stands" },
  ),
  limits: group(
    { least: quantity("temperature", { meaning: "least" }), most: quantity("temperature", { meaning: "most" }) },
    {
      meaning: "limits of supply air",
      optional: true,
      check: (values, say) => {
        if (Number(values.least) > Number(values.most)) say("least", "the least is above the most", "at most the most");
      },
    },
  ),
  share: quantity("share", { meaning: "outside air", optional: true, minimum: "30 %", maximum: "100 %" }),
  sections: list(
    variant(
      {
        steamCoil: {
          rows: integer({ meaning: "rows", minimum: 1, maximum: 4 }),
          pitch: quantity("pitch", { meaning: "fins", default: "8 per in" }),
          wheel: component<Wheel>()("wheel", { meaning: "unused wheel", optional: true }),
        },
        fan: {
          wheel: component<Wheel>()("wheel", { meaning: "wheel", default: "wheel 27" }),
          drive: choice(["belt", "direct"], { meaning: "drive", default: "direct" }),
          service: factor({ meaning: "service factor", default: 1.15, minimum: 1, maximum: 2 }),
        },
      },
      {
        meaning: "a section",
        checks: {
          fan: (values, say) => {
            if (values.drive === "belt" && Number(values.service) < 1.4)
              say("service", "too small for belts", "at least 1.4");
          },
        },
      },
    ),
    { meaning: "sections in airflow order", fewest: 1, most: 3 },
  ),
} as const;

/** A text without problems. */
export const soundText = `# the unit on the north roof
tag: 012
supply airflow: 18,400 cfm   # design
sections:
  - kind: steam coil
    rows: 2
  - &fan
    kind: fan
    drive: belt
    service: 1-1/2
  - *fan
`;
