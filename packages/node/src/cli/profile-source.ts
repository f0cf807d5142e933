import { nearestName } from "@oncethrough/engine/form/nearest-name";
import type { Place } from "@oncethrough/engine/form/reading";
import type { Profile, Profiles } from "@oncethrough/engine/rule/profile";
import { UsageProblem } from "./exit-code.ts";
import type { FileProblemLine } from "./job-source.ts";

/** The profile's name as a file has it, and where. */
interface WrittenProfile {
  readonly file: string;
  readonly wanted: string | undefined;
  readonly place: Place | undefined;
}

/** The profile that the option names, or the job; a name in the job that nobody knows is a problem at its place. */
export function chosenProfile(
  { byName }: Profiles,
  option: string | undefined,
  { file, wanted: written, place }: WrittenProfile,
): { readonly profile?: Profile; readonly problem?: FileProblemLine } {
  const known = [...byName.keys()];
  const wanted = option ?? written;
  const profile = wanted === undefined ? undefined : byName.get(wanted);
  if (profile !== undefined) return { profile };
  if (wanted === undefined) return {};
  const nearest = nearestName(wanted, known);
  const allowed = known.join(", ");
  if (option !== undefined) {
    const meant = nearest === undefined ? "" : ` (did you mean "${nearest}"?)`;
    throw new UsageProblem(`--profile "${option}" is no owner profile${meant}; allowed: ${allowed}`);
  }
  const problem: FileProblemLine = {
    file,
    line: place?.line ?? 1,
    column: place?.column ?? 1,
    path: "duty.ownerProfile",
    field: "owner profile",
    value: wanted,
    problem: `"${wanted}" is no owner profile`,
    allowed,
    ...(nearest === undefined ? {} : { nearest }),
    severity: "error",
  };
  return { problem };
}
