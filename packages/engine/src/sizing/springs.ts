import type { Spring } from "#component/spring";
import type { Finding } from "#rule/finding";
import { findingWords } from "#rule/words";
import type { FanDesign } from "#section/fan/design";
import { choose, type Solved, sectionsOfKind, type Workroom } from "./workroom.ts";

/** Springs of the next larger deflection under the fan. */
export function softerSprings({
  room,
  solved,
  finding,
}: {
  readonly room: Workroom;
  readonly solved: Solved;
  readonly finding: Finding;
}): boolean {
  const section = sectionsOfKind(room, "fan").find(
    ({ name }) => name === solved.unit.sections[finding.entry.index]?.name,
  );
  if (section === undefined) return false;
  const present = (solved.unit.sections[finding.entry.index]!.design as FanDesign).springs.deflection;
  const softer = room.catalogue
    .names("spring")
    .map((name) => room.catalogue.component("spring", name) as Spring)
    .filter(({ deflection }) => deflection > present * 1.01)
    .sort((a, b) => a.deflection - b.deflection)[0];
  return softer !== undefined && choose(room, section, { springs: softer.head.name }, findingWords(finding, "ip"));
}
