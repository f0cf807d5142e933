import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import type { JobReading } from "@oncethrough/engine/job/read-job";
import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import { emptyHistory, type History } from "./history.ts";
import { readText, type SoundJob } from "./sound-job.ts";

/** Where the text comes from and what is stored there. */
export interface JobFile {
  readonly name: string;
  readonly origin: "server" | "disk" | "example";
  /** What the server calls the stored state; undefined where there is no server. */
  readonly version: string | undefined;
  readonly storedText: string;
}

/** How the machine is seen. */
export const unitViews = ["side", "plan", "ends", "3D"] as const;
/** One of these ways. */
export type UnitView = (typeof unitViews)[number];

/** A short word to the person, said once: a save that went well, one that did not. */
export interface Notice {
  readonly text: string;
  readonly weight: "information" | "caution";
}

/** A job as it was, and the act that it gave way to. */
export interface BeforeAct {
  readonly sound: SoundJob;
  /** What was done, in the words of the page. */
  readonly act: string;
}

/** All that the page knows. Everything shown follows from it; it holds no element of the page. */
export interface BenchState {
  readonly file: JobFile;
  /** The job text as it stands in the editor: the only truth about the job. */
  readonly text: string;
  readonly history: History;
  /** What `text` says, with its problems. */
  readonly reading: JobReading;
  /** The latest sound job: what is drawn. Of `text` itself when that has no errors. */
  readonly sound: SoundJob | undefined;
  /** The machine with a section's end as it is carried: drawn while it is tried, and written nowhere. */
  readonly trial: SoundJob | undefined;
  /** What stood before the last act that changed the job: an edit, an undo, a redo. */
  readonly before: BeforeAct | undefined;
  /** Path of the part in hand: `duty`, `unit.casing` or `unit.sections[3]`. */
  readonly picked: string;
  /** Key of the condition in hand. */
  readonly condition: string;
  readonly system: UnitSystem;
  readonly view: UnitView;
  /** Place in the airflow at which a new section is about to be put. */
  readonly addingAt: number | undefined;
  /** Air is seen to move in the drawing. */
  readonly airMoves: boolean;
  /** The finding that is open: its key. */
  readonly finding: string | undefined;
  /** Figure of the picked section whose working is open. */
  readonly openWorking: string | undefined;
  /** How many conditions of the sound job are told of: none until a worker tells of all. */
  readonly solved: number;
  readonly notice: Notice | undefined;
}

/** The condition that is shown first: most heat to take out, filters half loaded. */
const firstCondition = "wet-bulb-day-0.5";

/** A bench with a file just opened. */
export function openedBench(
  file: JobFile,
  catalogue: Catalogue,
  system: UnitSystem,
  text = file.storedText,
): BenchState {
  const { reading, sound } = readText(text, catalogue, undefined);
  return {
    file,
    text,
    history: emptyHistory,
    reading,
    sound,
    trial: undefined,
    before: undefined,
    picked: firstPick(sound),
    condition: firstCondition,
    system,
    view: "side",
    addingAt: undefined,
    airMoves: true,
    finding: undefined,
    openWorking: undefined,
    solved: 0,
    notice: undefined,
  };
}

/** The cooling coil, where most is decided; else the first section. */
function firstPick(sound: SoundJob | undefined): string {
  const index = sound?.job.unit.sections.findIndex((section) => section.behaviour.role === "cooling") ?? -1;
  return sectionPath(Math.max(0, index));
}

/** Path of the section at a place in the airflow. */
export function sectionPath(index: number): string {
  return `unit.sections[${index}]`;
}

/** Place in the airflow of the section that a path names; undefined for other paths. */
export function sectionIndex(path: string): number | undefined {
  const found = /^unit\.sections\[(\d+)\]/.exec(path)?.[1];
  return found === undefined ? undefined : Number(found);
}

/** True when the text is not what is stored. */
export function isDirty(state: BenchState): boolean {
  return state.text !== state.file.storedText;
}

/** True when the drawing shows an earlier text, because the one in the editor has errors. */
export function isStale(state: BenchState): boolean {
  return state.sound !== undefined && state.sound.text !== state.text;
}
