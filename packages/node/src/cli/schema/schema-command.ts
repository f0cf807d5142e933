import { nearestName } from "@oncethrough/engine/form/nearest-name";
import { schemaNames } from "../command-table.ts";
import { exitCode, UsageProblem } from "../exit-code.ts";
import { type Given, printJson, type Streams } from "../session.ts";
import { type SchemaName, schemas } from "./schemas.ts";

/** `oncethrough schema`: prints a published schema. */
export async function schemaCommand(given: Given, streams: Streams): Promise<number> {
  printJson(streams, schemas[schemaName(given.operands[0] ?? "job")]());
  return exitCode.fine;
}

function schemaName(typed: string): SchemaName {
  const found = schemaNames.find((name) => name === typed);
  if (found !== undefined) return found;
  const nearest = nearestName(typed, schemaNames);
  const meant = nearest === undefined ? "" : ` (did you mean "${nearest}"?)`;
  throw new UsageProblem(`there is no schema "${typed}"${meant}; allowed: ${schemaNames.join(", ")}`);
}
