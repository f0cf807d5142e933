import { readCatalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { readShop } from "@oncethrough/engine/takeoff/read-shop";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { type JobFile, openedBench } from "#state/bench-state";
import { createBenchStore } from "#state/bench-store";
import { createSheetStore } from "#state/sheet-store";
import { createVariantStore } from "#state/variant-store";
import { BenchContext } from "#view/use-bench";
import { SheetContext } from "#view/use-sheet";
import { VariantContext } from "#view/use-variants";
import { WorkContext } from "#view/use-work";
import { startWorker } from "#work/page-port";
import { WorkDesk } from "#work/work-desk";
import { BenchPage } from "./bench-page.tsx";
import { watchDisk } from "./disk-watch.ts";
import { createJobDesk, exampleFile, servedFile } from "./job-desk.ts";
import { type JobServer, jobServer, takeToken } from "./job-server.ts";
import { keepOffline } from "./keep-offline.ts";
import { type ShippedExample, shippedCatalogue, shippedExamples } from "./shipped-texts.ts";
import { solveRest } from "./solve-rest.ts";

/** Asks the server, where there is one, for the job, the shop's records and books, and the owners' profiles; else begins with the demo. */
async function firstTexts(server: JobServer | undefined) {
  const served = await Promise.all([
    server?.job(),
    server?.shopCatalogue(),
    server?.shopBooks(),
    server?.ownProfiles(),
  ]).catch(() => undefined);
  const [job, shop = [], given, profiles = []] = served ?? [];
  const books = given ?? (await import("./shipped-books.ts")).shippedBooks();
  return { job, shop, books, profiles, isServed: served !== undefined };
}

async function demoFile([demo]: readonly ShippedExample[]): Promise<JobFile> {
  if (demo === undefined) return exampleFile("job.yaml", "format: oncethrough job 1\n");
  return exampleFile(demo.path, await demo.text());
}

async function start(): Promise<void> {
  const place = document.getElementById("page");
  if (place === null) throw new Error("the page has no place for the workbench");
  const token = takeToken(window);
  const server = token === undefined ? undefined : jobServer(token);
  const { job, shop, books, profiles, isServed } = await firstTexts(server);
  const examples = shippedExamples();
  const file = job === undefined ? await demoFile(examples) : servedFile(job);
  const records = [...shippedCatalogue(), ...shop];
  const catalogue = readCatalogue(records);
  const work = new WorkDesk(startWorker, () => ({ records, profiles, shop: books }), navigator.hardwareConcurrency - 1);
  const store = createBenchStore(openedBench(file, catalogue, "ip"), catalogue, readShop(books));
  const desk = createJobDesk(store, isServed ? server : undefined, examples, localStorage, window);
  solveRest(store, work);
  if (server !== undefined && isServed) watchDisk(store, server, window);
  if (import.meta.env.PROD) keepOffline(navigator);
  createRoot(place).render(
    <StrictMode>
      <BenchContext value={store}>
        <WorkContext value={work}>
          <SheetContext value={createSheetStore()}>
            <VariantContext value={createVariantStore(localStorage)}>
              <BenchPage desk={desk} />
            </VariantContext>
          </SheetContext>
        </WorkContext>
      </BenchContext>
    </StrictMode>,
  );
}

await start();
