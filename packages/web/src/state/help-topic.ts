/** A page of help: a section kind's, duty's or cabinet's, a method's, a family of rules, or a publication that they rest on. */
export type HelpTopic = `${HelpHead}/${string}`;

/** What pages of help are listed under; publications are reached from the pages that cite them. */
export type HelpHead = "sections" | "methods" | "rules" | "sources";

/** By which methods each kind of section is worked. */
const methods: Readonly<Record<string, string>> = {
  access: "air-path-losses",
  attenuator: "sound",
  "chilled-water coil": "cooling-coil",
  "discharge plenum": "fan",
  fan: "fan",
  "filter bank": "filters",
  "hot-water coil": "heating-coil",
  "intake hood": "intake",
  louver: "intake",
  "mixing box": "dampers-and-mixing",
  "moisture eliminator": "cooling-coil",
  "recovery coil": "heating-coil",
  "shut-off damper": "dampers-and-mixing",
  "spray gap": "air-path-losses",
  "steam coil": "steam-coil",
  "steam coil with face and bypass": "steam-coil",
  "steam humidifier": "humidification",
};

/** The page of the methods behind the figures of a section kind; undefined where its figures are entered. */
export function methodOfKind(kind: string): HelpTopic | undefined {
  const page = methods[kind];
  return page === undefined ? undefined : `methods/${page}`;
}

/** The topic of a section kind. */
export function topicOfKind(kind: string): HelpTopic {
  return `sections/${kind.replaceAll(" ", "-")}`;
}
