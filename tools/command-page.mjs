/** Writes docs/command-line.md from the table of commands that the program's own help is made from. */

/**
 * @typedef {import("../packages/node/src/cli/command-table.ts")} Table
 * @typedef {import("../packages/node/src/cli/exit-code.ts")} ExitCodes
 */

/**
 * @param {Table} table
 * @param {ExitCodes} exitCodes
 * @returns {string}
 */
export function commandPage(table, exitCodes) {
  const { commands, programMeaning, programName } = table;
  const lines = [
    "# Command line",
    "",
    "Made from `packages/node/src/cli/command-table.ts` by `npm run generate`; `--help` prints the same.",
    "",
    `\`${programName}\`: ${programMeaning}.`,
    "",
    'Values carry their units, `"95 °F"`, `"6,200 ft"`, `"29.92 inHg"`. Figures go to standard output, complaints to standard',
    "error. Colour is used on a terminal only, and not where `NO_COLOR` is set; nothing is said by colour alone. JSON is in SI",
    "units under whole-word names, as the schemas in `schemas/` describe.",
    "",
    "| command | |",
    "|---|---|",
    ...commands.map((command) => `| [\`${usage(programName, command)}\`](#${command.name}) | ${command.meaning} |`),
    "",
    ...commands.flatMap((command) => commandPart(programName, command)),
    "## Exit codes",
    "",
    "| code | meaning |",
    "|---|---|",
    ...exitCodes.exitCodeMeanings.map(({ code, meaning }) => `| ${code} | ${meaning} |`),
    "",
    "Whatever goes wrong is said in one line. With `ONCETHROUGH_TRACE=1` a fault of the program shows its stack as well.",
    "",
  ];
  return lines.join("\n");
}

/**
 * @param {string} program
 * @param {Table["commands"][number]} command
 */
function usage(program, { name, operands }) {
  const words = operands.map(({ name: operand, optional, several }) => {
    const word = several ? `${operand}...` : operand;
    return optional ? `[${word}]` : `<${word}>`;
  });
  return [program, name, ...words].join(" ");
}

/**
 * @param {string} program
 * @param {Table["commands"][number]} command
 */
function commandPart(program, command) {
  const { name, details, operands, options, examples } = command;
  return [
    `## ${name}`,
    "",
    details,
    "",
    "```",
    `${usage(program, command)}${options.length > 0 ? " [options]" : ""}`,
    "```",
    "",
    ...(operands.length + options.length === 0
      ? []
      : [
          "| | |",
          "|---|---|",
          ...operands.map((operand) => `| \`${operand.name}\` | ${operand.meaning} |`),
          ...options.map((option) => `| \`${option.flags}\` | ${option.meaning}${limits(option)} |`),
          "",
        ]),
    "```sh",
    ...examples.flatMap((example) => [`# ${example.meaning}`, `${program} ${example.line}`]),
    "```",
    "",
  ];
}

/** @param {import("../packages/node/src/cli/command-table.ts").OptionLine} option */
function limits({ choices, default: preset }) {
  const parts = [
    ...(choices === undefined ? [] : [`one of ${choices.map((each) => `\`${each}\``).join(", ")}`]),
    ...(preset === undefined ? [] : [`\`${preset}\` when left out`]),
  ];
  return parts.length === 0 ? "" : `; ${parts.join(", ")}`;
}
