import type { QuantityKind } from "./kind.ts";
import { kindTable } from "./kind-table.ts";
import { canonicalUnit, plainCharacters } from "./spelling.ts";

interface Advice {
  readonly kinds: readonly QuantityKind[] | "any";
  readonly spelled: RegExp;
  readonly say: string;
}

const gauge = "counts from the pressure outside; add the site's barometric pressure and write psia or kPa(a)";
const absolute = "counts from vacuum; take the site's barometric pressure off and write psig or kPa(g)";

/** Mix-ups that people make, by canonical spelling; the first that fits is said. */
const advice: readonly Advice[] = [
  {
    kinds: "any",
    spelled: /^mbtu/,
    say: "is read as thousand by some and as million by others; write kBtu or MBH, or MMBtu",
  },
  { kinds: "any", spelled: /^(ga|gauge)$/, say: "is a sheet number, not a thickness; write the thickness, 0.0598 in" },
  { kinds: ["absolutePressure"], spelled: /^psi$/, say: "could be gauge or absolute; write psia" },
  { kinds: ["absolutePressure"], spelled: /(g|gauge)$/, say: gauge },
  { kinds: ["gaugePressure"], spelled: /(a|abs)$/, say: absolute },
  { kinds: ["pressureDifference"], spelled: /^psig|gauge$|\(g\)$/, say: "is a gauge pressure; a difference is in psi" },
  { kinds: ["pressureDifference"], spelled: /^psia|abs$/, say: "is an absolute pressure; a difference is in psi" },
  { kinds: ["actualAirflow"], spelled: /^s(td)?(cfm|l|m3|ft3)/, say: "is standard air; write the actual airflow" },
  { kinds: ["standardAirflow"], spelled: /^a(ct)?(cfm|l|m3|ft3)/, say: "is actual air; write the standard airflow" },
  { kinds: ["temperature"], spelled: /^[fckr]°$/, say: "is a temperature difference; a temperature is in °F or °C" },
  { kinds: ["force"], spelled: /^(kg|g|kgf)$/, say: "is a mass; write N or lbf" },
  { kinds: ["soundLevel"], spelled: /^dba$/, say: "is A-weighted; this level is not weighted" },
  { kinds: ["weightedSoundLevel"], spelled: /^db$/, say: "does not say that it is A-weighted; write dBA" },
];

/**
 * Says why a unit is not taken: a known mix-up, a unit of another kind, a small m for mega-, or simply unknown.
 *
 * @param spelled text: the unit as typed
 * @param kind choice: what the field measures
 * @returns text: a sentence without full stop
 * @example adviceAbout("psig", "velocity") // "\"psig\" is a unit of gauge pressure, not of velocity"
 * @source derived-here
 */
export function adviceAbout(spelled: string, kind: QuantityKind): string {
  const canonical = canonicalUnit(spelled);
  const known = advice.find(
    (each) => (each.kinds === "any" || each.kinds.includes(kind)) && each.spelled.test(canonical),
  );
  if (known !== undefined) return `"${spelled}" ${known.say}`;
  const mega = kindTable[kind].units.find((each) => each.mega && each.spellings.includes(canonical));
  if (mega !== undefined) return `"${spelled}" begins with a small m, which is a thousandth; write ${mega.name}`;
  const other = otherKind(canonical, kind);
  if (other !== undefined) return `"${spelled}" is a unit of ${other}, not of ${kindTable[kind].words}`;
  return `"${spelled}" is not a unit known here${plainCharacters(spelled).length > 24 ? "; a number and a unit is enough" : ""}`;
}

function otherKind(canonical: string, kind: QuantityKind): string | undefined {
  const entries = Object.entries(kindTable);
  const found = entries.find(
    ([name, entry]) => name !== kind && entry.units.some((u) => u.spellings.includes(canonical)),
  );
  return found?.[1].words;
}
