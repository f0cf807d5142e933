import fastifyStatic from "@fastify/static";
import fastify, { type FastifyError, type FastifyInstance } from "fastify";
import { FileProblem } from "#files/file-problem";
import { NameProblem } from "#files/job-folder";
import { addJobRoutes } from "./job-routes.ts";
import { answerProblem, protect } from "./protection.ts";
import type { ServerOptions } from "./server-options.ts";

/** Bytes of a request; a job is a few kilobytes. */
export const largestRequest = 4 * 1024 * 1024;

/** The page and its requests, not yet listening. */
export async function createServer(options: ServerOptions): Promise<FastifyInstance> {
  const server = fastify({
    logger: false,
    bodyLimit: largestRequest,
    requestTimeout: 30_000,
    connectionTimeout: 60_000,
    keepAliveTimeout: 5_000,
    forceCloseConnections: true,
    routerOptions: { maxParamLength: 250 },
    ajv: { customOptions: { removeAdditional: false, coerceTypes: false, useDefaults: false, allErrors: false } },
  });
  // JSON alone: a form on another page can send plain text, but not this type, without being asked for leave first.
  server.removeContentTypeParser("text/plain");
  protect(server, options.token);
  server.setErrorHandler((error: FastifyError, _request, reply) => {
    const { status, problem } = problemOf(error);
    return answerProblem(reply, status, problem);
  });
  server.setNotFoundHandler((_request, reply) => answerProblem(reply, 404, "there is nothing at this address"));
  addJobRoutes(server, options);
  await server.register(fastifyStatic, {
    root: options.siteFolder,
    index: ["index.html"],
    dotfiles: "deny",
    list: false,
    cacheControl: false,
  });
  return server;
}

function problemOf(error: FastifyError): { status: number; problem: string } {
  if (error instanceof NameProblem) return { status: 400, problem: error.message };
  if (error instanceof FileProblem) {
    return { status: error.message.endsWith("there is no such file") ? 404 : 422, problem: error.message };
  }
  if (error.validation !== undefined)
    return { status: 400, problem: `the request is not understood: ${error.message}` };
  const status = error.statusCode ?? 500;
  if (status === 413) return { status, problem: "the text is larger than the 4 MB that are taken" };
  if (status >= 400 && status < 500) return { status, problem: error.message };
  return { status: 500, problem: "the program has a fault; the file was not touched" };
}
