import { soundOf } from "#unit/sound";
import { type Machine, machineRule, type Rule } from "../contract.ts";

type Outlet = "intake" | "discharge" | "casing";

/** The loudest A-weighted sum over the conditions, with what it may be off by. */
function loudest({ unit, ratings }: Machine, outlet: Outlet): { readonly level: number; readonly off: number } {
  let found = { level: Number.NaN, off: 0 };
  for (const rating of ratings) {
    if (!rating.solved || rating.condition.flow.mode === "fan stopped") continue;
    const sound = soundOf(unit, rating)?.[outlet];
    if (sound !== undefined && !(sound.weighted <= found.level))
      found = { level: sound.weighted, off: sound.uncertainty };
  }
  return found;
}

function soundRule(outlet: Outlet): Rule {
  return machineRule({
    id: `sound at the ${outlet}`,
    covers: ["SND-01", "SND-02", "SND-03", "SND-04", "SND-05"],
    protects: "neighbours and rooms from noise",
    measures: `A-weighted sound power at the ${outlet}`,
    quantity: "weightedSoundLevel",
    span: 10,
    sense: "at most",
    limit: ({ duty }) => duty.soundLimits[outlet] ?? Number.NaN,
    limitWords: "the duty's limit",
    source: "definition of the duty's limit; the level is from-memory where the fan is a plenum wheel",
    certainty: "derived here",
    isGuide: true,
    severity: "nuisance",
    remedy: "an attenuator, perforated panels, a slower fan; ask for tested sound data",
    mends: [
      { at: "casing", field: "innerSkin", way: "other" },
      { at: { kind: "fan" }, field: "diameter", way: "more" },
    ],
    of: "unit",
    missing: "the fan's sound power is not known",
    value: (at) => (at.duty.soundLimits[outlet] === undefined ? undefined : loudest(at, outlet).level),
    detail: (at) => `the figure may be off by ${Math.round(loudest(at, outlet).off)} dB either way`,
  });
}

/** Sound where it leaves the unit: predicted, so that what it tells is no verdict before tested data. */
export const soundRules: readonly Rule[] = (["intake", "discharge", "casing"] as const).map(soundRule);
