import { timingSafeEqual } from "node:crypto";
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";

/** Name of the header that carries the token of the printed address. */
export const tokenHeader = "x-oncethrough-token";

/** What the page may load: its own files and nothing else. */
const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
  "object-src 'none'",
].join("; ");

const answerHeaders: Record<string, string> = {
  "content-security-policy": contentSecurityPolicy,
  "x-content-type-options": "nosniff",
  "x-frame-options": "DENY",
  "referrer-policy": "no-referrer",
  "cross-origin-opener-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
  "permissions-policy": "camera=(), geolocation=(), microphone=(), payment=(), usb=()",
};

/**
 * Guards every request: the Host header must be this server's own (a foreign name that resolves to loopback is refused),
 * a page of another origin is refused, and the API asks for the token that only the printed address carries.
 */
export function protect(server: FastifyInstance, token: string): void {
  server.addHook("onRequest", async (request, reply) => {
    const refusal = refusalOf(request, token);
    if (refusal !== undefined) return reply.code(refusal.status).send({ problem: refusal.problem });
  });
  server.addHook("onSend", async (request, reply) => {
    for (const [name, value] of Object.entries(answerHeaders)) reply.header(name, value);
    reply.header("cache-control", isApi(request) ? "no-store" : "no-cache");
  });
}

interface Refusal {
  readonly status: number;
  readonly problem: string;
}

function refusalOf(request: FastifyRequest, token: string): Refusal | undefined {
  const port = request.socket.localPort;
  if (!isOwnHost(request.headers.host, port)) return { status: 403, problem: "the Host header is not this server's" };
  const origin = request.headers.origin;
  if (origin !== undefined && !isOwnOrigin(origin, port)) {
    return { status: 403, problem: "pages of other origins are not answered" };
  }
  const site = request.headers["sec-fetch-site"];
  if (site !== undefined && site !== "same-origin" && site !== "none" && !isNavigation(request)) {
    return { status: 403, problem: "requests from other sites are not answered" };
  }
  if (isApi(request) && !isToken(request.headers[tokenHeader], token)) {
    return { status: 401, problem: `open the page by the address that the program printed; it carries the token` };
  }
  return undefined;
}

/** A person who follows a link to the page; the page itself holds nothing secret. */
function isNavigation(request: FastifyRequest): boolean {
  return request.method === "GET" && request.headers["sec-fetch-mode"] === "navigate" && !isApi(request);
}

function isApi(request: FastifyRequest): boolean {
  return /^\/+api(\/|\?|$)/i.test(decodeLoosely(request.url));
}

function decodeLoosely(url: string): string {
  try {
    return decodeURIComponent(url);
  } catch {
    return url;
  }
}

/** Without a socket, in tests that inject requests, there is no port to compare. */
function isOwnHost(host: string | undefined, port: number | undefined): boolean {
  const [, name, given] = /^(127\.0\.0\.1|localhost)(?::(\d+))?$/i.exec(host ?? "") ?? [];
  if (name === undefined) return false;
  return port === undefined || Number(given ?? 80) === port;
}

function isOwnOrigin(origin: string, port: number | undefined): boolean {
  const [, host] = /^http:\/\/([^/]+)$/i.exec(origin) ?? [];
  return isOwnHost(host, port);
}

function isToken(given: string | string[] | undefined, token: string): boolean {
  if (typeof given !== "string") return false;
  const one = Buffer.from(given);
  const other = Buffer.from(token);
  return one.length === other.length && timingSafeEqual(one, other);
}

/** Answers what a handler could not: one line in words, never a trace. */
export function answerProblem(reply: FastifyReply, status: number, problem: string): FastifyReply {
  return reply.code(status).send({ problem });
}
