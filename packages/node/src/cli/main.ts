#!/usr/bin/env node
import { explain, run } from "./run.ts";
import type { Streams } from "./session.ts";

const { stdin, stdout, stderr, env } = process;

// A reader that has seen enough (`| head`) closes the pipe: what is still to be written is of no use to anyone.
for (const stream of [stdout, stderr]) {
  stream.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code !== "EPIPE" && error.code !== "ERR_STREAM_DESTROYED") process.exitCode = 70;
  });
}

const streams: Streams = {
  input: stdin,
  output: (text) => stdout.write(text),
  errors: (text) => stderr.write(text),
  columns: stdout.columns ?? 100,
  colour: stdout.isTTY === true && (env.NO_COLOR ?? "") === "" && env.TERM !== "dumb",
  terminal: stdout.isTTY === true,
  watched: stderr.isTTY === true,
  untilInterrupted: () =>
    new Promise((resolve) => {
      for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) process.once(signal, () => resolve());
    }),
};

for (const event of ["uncaughtException", "unhandledRejection"] as const) {
  process.on(event, (error) => process.exit(explain(error, streams)));
}

process.exitCode = await run(process.argv.slice(2), streams);
