import { spawn } from "node:child_process";
import { randomBytes } from "node:crypto";
import type { FastifyInstance } from "fastify";
import { createServer } from "./server.ts";
import type { ServerOptions } from "./server-options.ts";

/** A server that listens. */
export interface Serving {
  /** The address to open, token included. */
  readonly address: string;
  readonly port: number;
  readonly close: () => Promise<void>;
}

/** The server cannot listen; the message says what to do. */
export class ListenProblem extends Error {
  constructor(message: string) {
    super(message);
    this.name = "ListenProblem";
  }
}

/**
 * Serves the page on loopback, under a token that is new at every start.
 *
 * @throws ListenProblem when the port cannot be had
 */
export async function serve(options: Omit<ServerOptions, "token"> & { readonly port: number }): Promise<Serving> {
  const token = randomBytes(24).toString("base64url");
  const server = await createServer({ ...options, token });
  const port = await listen(server, options.port);
  return {
    // After the # it stays in the browser: neither requests nor referrers carry it.
    address: `http://127.0.0.1:${port}/#token=${token}`,
    port,
    close: () => server.close(),
  };
}

async function listen(server: FastifyInstance, port: number): Promise<number> {
  try {
    await server.listen({ host: "127.0.0.1", port });
  } catch (error) {
    await server.close();
    const code = (error as NodeJS.ErrnoException).code;
    if (code === "EADDRINUSE") {
      throw new ListenProblem(`port ${port} is taken; choose another with --port, or --port 0 for any free one`);
    }
    if (code === "EACCES") {
      throw new ListenProblem(`port ${port} is not permitted; choose one above 1023 with --port`);
    }
    throw error;
  }
  const address = server.server.address();
  return typeof address === "object" && address !== null ? address.port : port;
}

const openers: Partial<Record<NodeJS.Platform, readonly string[]>> = {
  darwin: ["open"],
  win32: ["rundll32", "url.dll,FileProtocolHandler"],
};

/** Asks the system to show `address` in the person's browser; when it cannot, the printed address remains. */
export function openBrowser(address: string): void {
  const [program = "xdg-open", ...before] = openers[process.platform] ?? ["xdg-open"];
  const opener = spawn(program, [...before, address], { stdio: "ignore", detached: true });
  opener.on("error", () => undefined);
  opener.unref();
}
