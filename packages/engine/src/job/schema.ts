import { jsonSchema } from "#form/schema";
import { jobFields } from "./job.ts";

/** Address under which the schema is known to editors; nothing is fetched from it. */
const schemaId = "urn:oncethrough:job:1";

/** JSON Schema (draft 2020-12) of the job file, for editors. */
export function jobSchema(): object {
  return jsonSchema(jobFields, "Oncethrough job", schemaId);
}
