/** Writes docs/arrows.md from the lists that the structure check reads. */
import { structureRules } from "./arrow-rules.mjs";
import { kindFolders, workspaces } from "./arrows.mjs";

/** @param {string} sentence */
function capital(sentence) {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

/** @param {import("./arrows.mjs").Workspace} workspace */
function workspacePart(workspace) {
  const others = workspace.workspaces.length === 0 ? "no other workspace" : workspace.workspaces.join(", ");
  return [
    `## ${workspace.name}`,
    "",
    `${capital(workspace.why)}.`,
    "",
    `May import: ${others}; the packages of its own manifest; Node's own modules: ${workspace.builtins ? "yes" : "no"}.`,
    "",
    "| folder | holds | why the arrow points one way |",
    "|---|---|---|",
    ...workspace.folders.map((folder) => `| \`${folder.name}\` | ${folder.holds} | ${folder.why} |`),
    "",
  ];
}

/** @returns {string} */
export function arrowsPage() {
  const general = structureRules.forbidden.filter(
    (rule) => !workspaces.some((each) => rule.name.startsWith(`${each.name}-`)) && !rule.name.endsWith("-strangers"),
  );
  const lines = [
    "# Import arrows",
    "",
    "Made from `tools/arrows.mjs` by `npm run generate`; `npm run structure` walks every import against it, types included.",
    "A folder imports only folders above it in its table. A folder appears with its first content; its place is kept here.",
    "",
    ...workspaces.flatMap(workspacePart),
    "## Kinds are strangers",
    "",
    ...kindFolders.map((each) => `- \`${each.workspace}/src/${each.folder}/*/\`: ${each.why}.`),
    "",
    "## Everywhere",
    "",
    ...general.map((rule) => `- **${rule.name}**: ${rule.comment}`),
    "",
  ];
  return lines.join("\n");
}
