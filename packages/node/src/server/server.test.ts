import { mkdir, readFile, symlink, writeFile } from "node:fs/promises";
import { request as httpRequest } from "node:http";
import { connect } from "node:net";
import { join } from "node:path";
import { describe, expect, it, onTestFinished } from "vitest";
import { openJobFolder } from "#files/job-folder";
import { readShopFolder } from "#files/shop-folder";
import { temporaryFolder } from "#files/temporary-folder.test-data";
import { serve } from "./serve.ts";
import { createServer } from "./server.ts";

const token = "a-token-for-tests";
const known = { host: "127.0.0.1", "x-oncethrough-token": token };

async function setting() {
  const outer = await temporaryFolder();
  const jobs = join(outer, "jobs");
  const site = join(outer, "site");
  await mkdir(jobs);
  await mkdir(site);
  await writeFile(join(jobs, "north-wing.yaml"), "duty: {}\n");
  await writeFile(join(outer, "secret.yaml"), "secret: yes\n");
  await writeFile(join(site, "index.html"), "<!doctype html><title>Oncethrough</title>");
  await writeFile(join(site, "main.js"), "export {};");
  await writeFile(join(site, ".hidden"), "hidden");
  const { folder } = await openJobFolder(jobs);
  const shopBooks = await readShopFolder(undefined);
  const ownProfiles = [{ path: "own.yaml", text: "profile: ours\n" }];
  const shopCatalogue = [{ path: "motor.yaml", text: "family: motor\n" }];
  return {
    outer,
    jobs,
    options: { folder, startJob: "north-wing.yaml", siteFolder: site, shopCatalogue, shopBooks, ownProfiles },
  };
}

async function injected() {
  const { options, ...rest } = await setting();
  const server = await createServer({ ...options, token });
  onTestFinished(() => server.close());
  return { server, ...rest };
}

describe("jobs over the server", () => {
  it("gives the start job, a named one and the list", async () => {
    const { server } = await injected();
    const start = await server.inject({ url: "/api/job", headers: known });
    expect(start.statusCode).toBe(200);
    expect(start.json()).toMatchObject({ name: "north-wing.yaml", text: "duty: {}\n" });
    const named = await server.inject({ url: "/api/job?name=north-wing.yaml", headers: known });
    expect(named.json()).toEqual(start.json());
    const list = await server.inject({ url: "/api/jobs", headers: known });
    expect(list.json()).toMatchObject({ start: "north-wing.yaml", jobs: [{ name: "north-wing.yaml", size: 9 }] });
    const catalogue = await server.inject({ url: "/api/catalogue", headers: known });
    expect(catalogue.json()).toEqual({ files: [{ path: "motor.yaml", text: "family: motor\n" }] });
    const profiles = await server.inject({ url: "/api/profiles", headers: known });
    expect(profiles.json()).toEqual({ files: [{ path: "own.yaml", text: "profile: ours\n" }] });
    const shop = await server.inject({ url: "/api/shop", headers: known });
    expect(shop.json().prices.text).toContain("book: prices");
  });

  it("saves, keeps the version before, and answers 409 with the text when the file changed on the disk", async () => {
    const { server, jobs } = await injected();
    const save = (payload: object) => server.inject({ method: "PUT", url: "/api/job", headers: known, payload });
    const { version } = (await server.inject({ url: "/api/job", headers: known })).json();
    const saved = await save({ name: "north-wing.yaml", text: "one\n", version });
    expect(saved.statusCode).toBe(200);
    expect(await readFile(join(jobs, "north-wing.yaml.previous"), "utf8")).toBe("duty: {}\n");
    await writeFile(join(jobs, "north-wing.yaml"), "by another hand\n");
    const late = await save({ name: "north-wing.yaml", text: "two\n", version: saved.json().version });
    expect(late.statusCode).toBe(409);
    expect(late.json().text).toBe("by another hand\n");
    const agreed = await save({ name: "north-wing.yaml", text: "two\n", version: late.json().version });
    expect(agreed.statusCode).toBe(200);
    expect(await readFile(join(jobs, "north-wing.yaml"), "utf8")).toBe("two\n");
    expect((await save({ name: "new.yaml", text: "x\n", version: null })).statusCode).toBe(200);
    expect((await save({ name: "new.yaml", text: "y\n" })).statusCode).toBe(409);
  });

  it("refuses ways out of the folder", async () => {
    const { server, outer, jobs } = await injected();
    await symlink(join(outer, "secret.yaml"), join(jobs, "out.yaml"));
    for (const name of [
      "../secret.yaml",
      "..%2Fsecret.yaml",
      "%2e%2e/secret.yaml",
      "out.yaml",
      join(outer, "secret.yaml"),
    ]) {
      const url = `/api/job?name=${name.includes("%") ? name : encodeURIComponent(name)}`;
      const answer = await server.inject({ url, headers: known });
      expect(answer.statusCode, name).toBe(400);
      expect(answer.body, name).not.toContain("secret: yes");
    }
    for (const name of ["../secret.yaml", "out.yaml", "note.txt"]) {
      const payload = { name, text: "mine now\n", version: null };
      const answer = await server.inject({ method: "PUT", url: "/api/job", headers: known, payload });
      expect(answer.statusCode, name).toBe(400);
    }
    expect(await readFile(join(outer, "secret.yaml"), "utf8")).toBe("secret: yes\n");
    for (const url of [
      "/../secret.yaml",
      "/%2e%2e/secret.yaml",
      "/..%2fjobs/north-wing.yaml",
      "/.hidden",
      "//etc/passwd",
    ]) {
      const answer = await server.inject({ url, headers: known });
      expect(answer.statusCode, url).toBeGreaterThanOrEqual(400);
      expect(answer.body, url).not.toMatch(/secret: yes|duty|hidden|root:/);
    }
  });

  it("answers what it does not take in one line, without a trace", async () => {
    const { server } = await injected();
    const put = (payload: string, type = "application/json") =>
      server.inject({ method: "PUT", url: "/api/job", headers: { ...known, "content-type": type }, payload });
    const refused: [Promise<{ statusCode: number; body: string }>, number][] = [
      [put("{not json"), 400],
      [put('{"name":"a.yaml"}'), 400],
      [put('{"name":"a.yaml","text":5}'), 400],
      [put('{"name":"a.yaml","text":"x","more":1}'), 400],
      [put('{"name":["a.yaml"],"text":"x"}'), 400],
      [put('{"__proto__":{"name":"a.yaml"},"name":"a.yaml","text":"x"}'), 400],
      [put("name=a.yaml", "text/plain"), 415],
      [put(JSON.stringify({ name: "a.yaml", text: "x".repeat(4 * 1024 * 1024) })), 413],
      [server.inject({ url: "/api/job?name=missing.yaml", headers: known }), 404],
      [server.inject({ url: "/api/job?other=1", headers: known }), 400],
      [server.inject({ url: "/api/nothing", headers: known }), 404],
      [server.inject({ method: "DELETE", url: "/api/job", headers: known }), 404],
    ];
    for (const [answer, status] of refused) {
      const { statusCode, body } = await answer;
      expect(statusCode, body).toBe(status);
      expect(Object.keys(JSON.parse(body)), body).toEqual(["problem"]);
      expect(body).not.toMatch(/\n|at .*:\d+:\d+/);
    }
  });
});

describe("who is answered", () => {
  it("asks for the token at every request for data", async () => {
    const { server } = await injected();
    for (const url of [
      "/api/jobs",
      "/api/job",
      "/api/catalogue",
      "/api/shop",
      "/API/jobs",
      "/%61pi/jobs",
      "//api/jobs",
    ]) {
      for (const given of [undefined, "", "wrong", `${token}x`, token.slice(1)]) {
        const headers = { host: "127.0.0.1", ...(given === undefined ? {} : { "x-oncethrough-token": given }) };
        const answer = await server.inject({ url, headers });
        expect(answer.statusCode, url).toBeGreaterThanOrEqual(400);
        expect(answer.body, url).not.toContain("north-wing");
      }
    }
    const inAddress = await server.inject({ url: `/api/jobs?token=${token}`, headers: { host: "127.0.0.1" } });
    expect(inAddress.statusCode).toBe(401);
  });

  it("refuses foreign names that resolve to loopback, the page's files included", async () => {
    const { server } = await injected();
    for (const host of [
      "evil.example",
      "evil.example:80",
      "127.0.0.1.evil.example",
      "localhost.evil.example",
      "0.0.0.0",
    ]) {
      for (const url of ["/", "/main.js", "/api/jobs"]) {
        expect((await server.inject({ url, headers: { ...known, host } })).statusCode, host).toBe(403);
      }
    }
    for (const host of ["127.0.0.1", "localhost", "LOCALHOST"]) {
      expect((await server.inject({ url: "/", headers: { host } })).statusCode, host).toBe(200);
    }
  });

  it("refuses pages of other origins and sites, even with the token", async () => {
    const { server } = await injected();
    for (const origin of [
      "https://evil.example",
      "http://evil.example",
      "null",
      "https://127.0.0.1",
      "http://127.0.0.1.evil.example",
    ]) {
      const answer = await server.inject({ url: "/api/jobs", headers: { ...known, origin } });
      expect(answer.statusCode, origin).toBe(403);
      expect(answer.headers["access-control-allow-origin"]).toBeUndefined();
    }
    for (const site of ["cross-site", "same-site"]) {
      const headers = { ...known, "sec-fetch-site": site };
      expect((await server.inject({ url: "/api/jobs", headers })).statusCode).toBe(403);
      expect((await server.inject({ url: "/main.js", headers })).statusCode).toBe(403);
      const link = { ...headers, "sec-fetch-mode": "navigate" };
      expect((await server.inject({ url: "/", headers: link })).statusCode, "a link that a person follows").toBe(200);
      expect((await server.inject({ url: "/api/jobs", headers: link })).statusCode).toBe(403);
    }
    const own = { ...known, origin: "http://127.0.0.1", "sec-fetch-site": "same-origin" };
    expect((await server.inject({ url: "/api/jobs", headers: own })).statusCode).toBe(200);
  });

  it("sends its protections with every answer, refusals too", async () => {
    const { server } = await injected();
    for (const [url, headers] of [
      ["/", known],
      ["/main.js", known],
      ["/api/jobs", known],
      ["/nothing", known],
      ["/", { host: "evil.example" }],
    ] as const) {
      const answer = await server.inject({ url, headers });
      const policy = String(answer.headers["content-security-policy"]);
      expect(policy, url).toContain("default-src 'none'");
      expect(policy, url).toContain("frame-ancestors 'none'");
      expect(policy, url).not.toMatch(/unsafe|https?:|\*/);
      expect(answer.headers, url).toMatchObject({
        "x-content-type-options": "nosniff",
        "referrer-policy": "no-referrer",
      });
    }
  });
});

describe("the server on a real socket", () => {
  const get = (port: number, path: string, headers: Record<string, string>) =>
    new Promise<{ status: number; body: string }>((resolve, reject) => {
      const call = httpRequest({ host: "127.0.0.1", port, path, headers }, (answer) => {
        let body = "";
        answer.on("data", (piece) => {
          body += piece;
        });
        answer.on("end", () => resolve({ status: answer.statusCode ?? 0, body }));
      });
      call.on("error", reject);
      call.end();
    });

  it("listens on loopback, prints a new token each time, and minds the port in Host and Origin", async () => {
    const { options } = await setting();
    const one = await serve({ ...options, port: 0 });
    const other = await serve({ ...options, port: 0 });
    onTestFinished(async () => {
      await one.close();
      await other.close();
    });
    expect(one.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/#token=[\w-]{32}$/);
    const tokenOf = (address: string) => address.split("token=")[1] ?? "";
    expect(tokenOf(one.address)).not.toBe(tokenOf(other.address));
    const own = { "x-oncethrough-token": tokenOf(one.address) };
    expect((await get(one.port, "/", {})).body).toContain("Oncethrough");
    expect((await get(one.port, "/api/jobs", own)).status).toBe(200);
    expect((await get(one.port, "/api/jobs", { ...own, host: `127.0.0.1:${other.port}` })).status).toBe(403);
    expect((await get(one.port, "/api/jobs", { ...own, origin: `http://127.0.0.1:${other.port}` })).status).toBe(403);
    expect((await get(other.port, "/api/jobs", own)).status).toBe(401);
    expect((await get(one.port, "/../../secret.yaml", own)).status).toBeGreaterThanOrEqual(400);
  });

  it("says that a port is taken and what to do", async () => {
    const { options } = await setting();
    const one = await serve({ ...options, port: 0 });
    onTestFinished(() => one.close());
    await expect(serve({ ...options, port: one.port })).rejects.toThrow(
      /^port \d+ is taken; choose another with --port/,
    );
  });

  it("closes at once although a browser holds a connection open", async () => {
    const { options } = await setting();
    const one = await serve({ ...options, port: 0 });
    const idle = connect(one.port, "127.0.0.1");
    idle.on("error", () => undefined);
    await new Promise((resolve) => idle.once("connect", resolve));
    const start = performance.now();
    await one.close();
    expect(performance.now() - start).toBeLessThan(2000);
    await expect(get(one.port, "/", {})).rejects.toThrow();
  });
});
