/**
 * Who may import whom. One ordered list per workspace: a folder imports only folders above it.
 * The structure check, its rules and the page docs/arrows.md are all made from these lists.
 *
 * @typedef {{ name: string, holds: string, why: string }} Folder
 * @typedef {{ name: string, folders: readonly Folder[], workspaces: readonly string[], builtins: boolean, why: string }} Workspace
 */

/** @type {readonly Folder[]} */
const engineFolders = [
  {
    name: "quantity",
    holds: "units of measure, parsed and printed at the edges",
    why: "a unit of measure is the same whoever writes it, so it may know nothing of what is measured",
  },
  {
    name: "form",
    holds: "descriptors of typed fields, and reading them from text",
    why: "how a field is read must not depend on which machine it describes",
  },
  {
    name: "numerics",
    holds: "root finding, interpolation, integration",
    why: "mathematics knows no air; physics asks it, never the other way round",
  },
  {
    name: "standard",
    holds: "tables and limits quoted from publications",
    why: "a quoted figure stands by itself; it imports nothing, so that no calculation can colour it",
  },
  {
    name: "fluid",
    holds: "properties of moist air, water, steam and glycol",
    why: "a property follows from a state; it may not ask which coil or which fan wants it",
  },
  {
    name: "weather",
    holds: "hourly weather files, read into hours",
    why: "outdoor air is what it is before any unit draws it in",
  },
  {
    name: "component",
    holds: "the physics of purchasable parts: finned surface, fan wheel, motor, drive, medium, blades",
    why: "a part is tested alone, so its performance may not depend on the section it is built into",
  },
  {
    name: "catalogue",
    holds: "reading of component records",
    why: "records become parts here, before any unit exists that could use them",
  },
  {
    name: "duty",
    holds: "what the customer needs, and the conditions made from it",
    why: "the duty is written before the machine; a machine must never bend what is asked",
  },
  {
    name: "section",
    holds: "the contract of a section and one folder per kind",
    why: "a section sees the air that enters it; it may not see the unit it stands in, nor a neighbour",
  },
  {
    name: "unit",
    holds: "sections in airflow order, solved together",
    why: "only the unit iterates across sections; what is drawn, priced or judged later may not steer it",
  },
  {
    name: "arrangement",
    holds: "the unit in millimetres, its masses and splits",
    why: "steel follows from the solved unit; price and rules read it",
  },
  {
    name: "takeoff",
    holds: "parts, material, hours, price",
    why: "a price is counted from the arrangement and must not choose it",
  },
  {
    name: "rule",
    holds: "acceptance criteria and findings",
    why: "a judge reads the machine; it may not change it, nor know who asked",
  },
  {
    name: "year",
    holds: "the unit over every hour",
    why: "the year asks the unit and the rules hour by hour; neither may know that it does",
  },
  {
    name: "design",
    holds: "from a duty to a unit: sizing and alternatives",
    why: "sizing proposes and reads every verdict; what it reads may not depend on it",
  },
  {
    name: "chart",
    holds: "display lists of charts",
    why: "a chart shows figures that exist; no figure may exist for its sake",
  },
  {
    name: "drawing",
    holds: "projections of the part tree",
    why: "a drawing projects the arrangement and the charts; nothing calculated may read a drawing",
  },
  {
    name: "job",
    holds: "the text file of the job: read, edit, schema, version steps",
    why: "the job holds all of the above and stands on top",
  },
  {
    name: "mending",
    holds: "the cheapest single change of a job that mends a finding",
    why: "a change is proved by reading, solving, judging and pricing the whole job anew; nothing below may know of it",
  },
  {
    name: "sizing",
    holds: "from a duty to a complete job: what is chosen, why, and what contradicts itself",
    why: "sizing writes job texts and solves what is read from them; nothing that a job is made of knows how it was sized",
  },
  {
    name: "record",
    holds: "readings taken on the built machine",
    why: "readings are set against the job's model and never feed back into it; they stand beside the job",
  },
  {
    name: "compare",
    holds: "two revisions of a job against each other",
    why: "a comparison reads jobs and nothing reads a comparison; it stands beside the job",
  },
];

/** @type {readonly Folder[]} */
const documentFolders = ["svg", "pdf", "xlsx", "dxf", "ifc", "glb"].map((format) => ({
  name: format,
  holds: `${format.toUpperCase()} written from display lists and part trees`,
  why: "one format never needs another, except that a page may hold a picture",
}));

/** @type {readonly Folder[]} */
const nodeFolders = [
  {
    name: "files",
    holds: "the only door to the disk",
    why: "what touches the disk is read in one place; it serves whoever asks",
  },
  {
    name: "worker",
    holds: "long work on threads",
    why: "a worker does the work it is given and does not know whether a server or a person waits",
  },
  {
    name: "reference",
    holds: "published cases run against the program",
    why: "cases judge the engine; what serves a person or a page does not lean on them",
  },
  {
    name: "server",
    holds: "the page and its requests, on loopback",
    why: "the server runs without a terminal",
  },
  {
    name: "cli",
    holds: "the command line",
    why: "the command line starts all the rest; nothing may need it",
  },
];

/** @type {readonly Folder[]} */
const webFolders = [
  {
    name: "state",
    holds: "what the page knows, without a page",
    why: "state is tested without a browser, so it may not know how it is shown",
  },
  {
    name: "work",
    holds: "long work: tasks, the worker that does them, the desk that hands them out and keeps results",
    why: "the worker has no page, so that work may know what is solved and never how it is shown",
  },
  {
    name: "view",
    holds: "the airway, charts and figures as pictures",
    why: "a picture shows state; the panels place it",
  },
  {
    name: "panel",
    holds: "the parts of the page a hand works with",
    why: "a panel is placed by the page and does not know its neighbours' places",
  },
  {
    name: "app",
    holds: "the page put together",
    why: "the page stands on top",
  },
];

/** @type {readonly Workspace[]} */
export const workspaces = [
  {
    name: "engine",
    folders: engineFolders,
    workspaces: [],
    builtins: false,
    why: "the engine is pure: it runs in Node, in a browser and in a worker, so it may lean on neither disk, page nor clock",
  },
  {
    name: "documents",
    folders: documentFolders,
    workspaces: ["engine"],
    builtins: false,
    why: "a writer turns the engine's lists into bytes; who stores the bytes is not its business",
  },
  {
    name: "node",
    folders: nodeFolders,
    workspaces: ["engine", "documents"],
    builtins: true,
    why: "the Node side reads the engine and the writers; the page is served as built files, never imported",
  },
  {
    name: "web",
    folders: webFolders,
    workspaces: ["engine", "documents"],
    builtins: false,
    why: "the page runs in a browser: it reads the engine and the writers, never the disk side",
  },
];

/** Folders whose subfolders are kinds that never import one another, with the reason. */
export const kindFolders = [
  {
    workspace: "engine",
    folder: "section",
    /** What several kinds are made of: it knows none of them. */
    common: ["coil"],
    why: "air is all that passes between sections; a kind that reads another kind cannot stand in a free order",
  },
  {
    workspace: "engine",
    folder: "rule",
    common: [],
    why: "rules are chosen one by one by an owner; a rule that leans on another cannot be left out",
  },
];

/** The modules a program starts from; all other production code must be reached from one of them. */
export const entryModules =
  "^packages/(node/src/(cli|reference)/main|web/src/app/main|(node|web|engine)/src/[a-z-]+/[a-z-]*worker)\\.tsx?$";

/** Tests, their data and benchmarks: never part of the program. */
export const testModules = "(\\.test|\\.test-data)\\.tsx?$|^packages/[^/]+/bench/|^tests/";

/** Modules that no program starts: finer and slower ways to the same figure, against which tests and benches hold the quick one. */
export const yardsticks = ["^packages/engine/src/component/coil/fine-grid\\.ts$"];
