import { isScalar, type Pair, type ParsedNode, type YAMLMap } from "yaml";
import { nearestName } from "./nearest-name.ts";
import { memberPath } from "./path.ts";
import { listed } from "./read-scalar.ts";
import { type Reading, report, type Spot, scalarText, typedText, type Written } from "./reading.ts";

/** A name and its value as written in a group. */
export interface Member {
  readonly key: ParsedNode;
  readonly value: Written;
}

/** The names written in a group, whether all of them are known and stand once, and what unknown ones probably mean. */
export interface Members {
  readonly byName: ReadonlyMap<string, Member>;
  readonly sound: boolean;
  readonly meant: ReadonlySet<string>;
}

/** Sorts the names written in a map; unknown ones and those written twice are reported. */
export function membersOf(
  reading: Reading,
  map: YAMLMap.Parsed | undefined,
  known: readonly string[],
  spot: Spot,
): Members {
  const byName = new Map<string, Member>();
  const meant = new Set<string>();
  let sound = true;
  for (const pair of (map?.items ?? []) as Pair<ParsedNode, Written>[]) {
    const member = { key: pair.key, value: pair.value };
    const name = scalarText(member.key);
    const first = name === undefined ? undefined : byName.get(name);
    if (name === undefined || !known.includes(name) || first !== undefined) {
      sound = false;
      const nearest = first === undefined ? nearestName(name ?? "", known) : undefined;
      if (nearest !== undefined) meant.add(nearest);
      reportMember(reading, map?.flow === true, member, first, known, nearest, spot);
    } else byName.set(name, member);
  }
  return { byName, sound, meant };
}

function reportMember(
  reading: Reading,
  inBraces: boolean,
  member: Member,
  first: Member | undefined,
  known: readonly string[],
  nearest: string | undefined,
  spot: Spot,
): void {
  const name = isScalar(member.key) ? (scalarText(member.key) ?? "") : typedText(reading, member.key);
  const here = { path: memberPath(spot.path, name), field: name, offset: member.key.range[0] };
  const value = typedText(reading, member.value);
  if (first !== undefined) {
    const { line } = reading.source.placeOf(first.key.range[0]);
    report(reading, here, value, `"${name}" is written twice`, `"${name}" once; the first is on line ${line}`);
  } else if (inBraces && /^\d{3}\b/.test(name)) {
    const allowed = `a number without commas inside braces, or in quotes: "18,400 cfm"`;
    report(reading, here, value, "inside braces a comma ends the value", allowed);
  } else {
    const where = spot.field === "" ? "" : ` in ${spot.field}`;
    report(reading, here, value, `"${name}" is not a name known here`, `${listed(known)}${where}`, nearest);
  }
}
