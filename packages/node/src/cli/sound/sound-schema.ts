import { listOf, number, published, record, text } from "../schema/describe.ts";

function bands(description: string): object {
  return {
    type: "array",
    items: { type: "number" },
    minItems: 8,
    maxItems: 8,
    description: `${description}; 63 to 8000 Hz`,
  };
}

const outletName = { enum: ["intake", "discharge", "casing", "return opening"] };

const outlet = record(
  {
    name: outletName,
    levels: bands("dB re 1 pW"),
    weighted: number("dB(A)"),
    uncertainty: number("dB either way"),
    limit: number("dB(A), of the duty"),
    outcome: { enum: ["held", "not certain", "exceeded"], description: "of the limit, with the uncertainty" },
  },
  "limit",
  "outcome",
);

const made = record(
  {
    downstream: bands("dB re 1 pW sent with the air"),
    upstream: bands("dB re 1 pW sent against the air"),
    toReturn: bands("dB re 1 pW sent through the return opening"),
    inside: bands("dB re 1 pW that the section's walls hear of it"),
    tone: number("Hz, of passing blades"),
    uncertainty: number("dB either way in a band"),
    source: text("bibliography key and place"),
    certainty: text("what the figures rest on"),
  },
  "toReturn",
  "tone",
);

const step = record(
  {
    section: text("name"),
    direction: { enum: ["against the air", "with the air", "at the fan"] },
    inside: bands("dB re 1 pW where the sound comes in"),
    loss: bands("dB that the section takes off"),
    made,
    radiated: bands("dB re 1 pW that its walls radiate"),
    source: text("bibliography key and place"),
    certainty: text(),
  },
  "made",
  "radiated",
);

/** The published schema of `oncethrough sound --json`. */
export function soundSchema(): object {
  const weighted = record(
    {
      intake: number("dB(A)"),
      discharge: number("dB(A)"),
      casing: number("dB(A)"),
      "return opening": number("dB(A)"),
    },
    "return opening",
  );
  const atCondition = record({ condition: text("key"), solved: { type: "boolean" }, weighted });
  return published("sound", "Sound power of a unit, as printed by `oncethrough sound --json`", {
    ...record({
      format: { const: "oncethrough sound 1" },
      tag: text("of the unit"),
      conditions: listOf(atCondition, "one for each condition at which the fan runs"),
      condition: text("key of the condition to which the rest belongs"),
      outlets: listOf(outlet, "where sound leaves the unit"),
      endReflection: bands("dB that the intake's opening throws back"),
      fan: made,
      steps: listOf(step, "sections in airflow order"),
      uncounted: listOf(
        record({
          section: text("name"),
          velocity: number("m/s on its face"),
          isBounded: { type: "boolean", description: "what the trade holds of such noise reaches so far" },
        }),
        "sections whose own flow noise no open method tells; not among the sums",
      ),
      caution: text(),
    }),
  });
}
