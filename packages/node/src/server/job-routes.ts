import type { FastifyInstance } from "fastify";
import type { ServerOptions } from "./server-options.ts";

const name = { type: "string", minLength: 1, maxLength: 200 } as const;
const version = { type: ["string", "null"], maxLength: 100 } as const;

interface SaveBody {
  readonly name: string;
  readonly text: string;
  readonly version?: string | null;
}

/**
 * The requests of the page.
 *
 * - `GET /api/jobs` → `{ jobs: [{ name, size, changed }], start }`
 * - `GET /api/job?name=…` → `{ name, text, version }`; without a name the job that the program was started with
 * - `PUT /api/job` `{ name, text, version }` → `{ version }`, or 409 `{ version, text }` when the file on the disk is not
 *   of that version; without a version (or with null) the file must not exist yet
 * - `GET /api/catalogue` → `{ files: [{ path, text }] }`, the shop's own records
 * - `GET /api/profiles` → `{ files: [{ path, text }] }`, the owners' own profiles
 * - `GET /api/shop` → `{ prices, rates, stock }`, each `{ path, text }`: the books that the page prices by
 */
export function addJobRoutes(server: FastifyInstance, options: ServerOptions): void {
  const { folder, startJob } = options;
  server.get("/api/jobs", async () => ({ jobs: await folder.list(), start: startJob ?? null }));

  server.get<{ Querystring: { name?: string } }>(
    "/api/job",
    { schema: { querystring: { type: "object", additionalProperties: false, properties: { name } } } },
    async (request, reply) => {
      const wanted = request.query.name ?? startJob;
      if (wanted === undefined) return reply.code(404).send({ problem: "the folder holds no job yet" });
      return folder.read(wanted);
    },
  );

  server.put<{ Body: SaveBody }>(
    "/api/job",
    {
      schema: {
        body: {
          type: "object",
          additionalProperties: false,
          required: ["name", "text"],
          properties: { name, text: { type: "string", minLength: 1 }, version },
        },
      },
    },
    async (request, reply) => {
      const { name: wanted, text, version: known } = request.body;
      const outcome = await folder.save(wanted, text, known === null || known === "" ? undefined : known);
      if (outcome.saved) return { version: outcome.version };
      return reply.code(409).send({ version: outcome.version, text: outcome.text });
    },
  );

  server.get("/api/catalogue", async () => ({ files: options.shopCatalogue }));
  server.get("/api/profiles", async () => ({ files: options.ownProfiles }));
  server.get("/api/shop", async () => options.shopBooks);
}
