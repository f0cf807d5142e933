/// <reference types="vite/client" />
import { sampleEpw } from "@oncethrough/engine/weather/sample.test-data";
import { describe, expect, it } from "vitest";
import {
  answered,
  assumedOn,
  blankText,
  contradictionsIn,
  enquiryOf,
  jobFileName,
  leaves,
  neededOn,
  offers,
  questionsOf,
} from "./enquiry.ts";
import { daysOfWeatherFile } from "./enquiry-days.ts";
import { createEnquiryStore } from "./enquiry-store.ts";
import { catalogue } from "./sample-job.test-data.ts";

const blank = enquiryOf(blankText, catalogue);
const answers = (members: Record<string, string>) =>
  Object.entries(members).map(([path, typed]) => ({ path: `duty.${path}`, typed }));
const told = answered(
  blank,
  answers({
    "supplyAirflow.design": "12000 cfm",
    "site.altitude": "30 ft",
    "summer.dryBulbDay.dryBulb": "91 °F",
    "summer.dryBulbDay.wetBulb": "76 °F",
    "summer.wetBulbDay.dryBulb": "86 °F",
    "summer.wetBulbDay.wetBulb": "79 °F",
    "summer.dewPointDay.dryBulb": "82 °F",
    "summer.dewPointDay.dewPoint": "77 °F",
    "winter.dryBulb": "8 °F",
    "winter.relativeHumidity": "75 %",
    "setPoints.coilLeaving": "53 °F",
    "setPoints.winterSupply": "60 °F",
    "externalStatic.pressure": "2.25 in.wg",
  }),
  catalogue,
);
const whole = answered(
  told,
  offers.filter(({ name }) => name === "steam" || name === "chilled water").flatMap((offer) => offer.answers),
  catalogue,
);

describe("an enquiry", () => {
  it("begins with nothing but a name, and says leaf by leaf what it needs", () => {
    expect(blank.reading.duty).toBeUndefined();
    expect(leaves.map((leaf) => neededOn(leaf, blank).length)).toEqual([1, 3, 2, 0, 0]);
    expect(questionsOf(blank)).toEqual([]);
  });

  it("is a duty once it is answered; what is missing at hand contradicts it, and an offer mends that", () => {
    expect(told.refused).toBeUndefined();
    expect(told.reading.problems).toEqual([]);
    expect(
      contradictionsIn(told)
        .map(({ words }) => words)
        .join("; "),
    ).toMatch(/no chilled water.*neither steam nor hot water/);
    expect(contradictionsIn(whole)).toEqual([]);
    expect(whole.text).toContain("pressure at coil: 10 psig");
  });

  it("lists what was assumed, what moves price or risk most first, and a question answered is one no longer", () => {
    const path = "duty.externalStatic.reserve";
    const asked = questionsOf(whole).map((question) => question.path);
    expect(asked.indexOf(path)).toBeLessThan(asked.indexOf("duty.stackHeight"));
    const next = answered(whole, [{ path, typed: "0.25 in.wg" }], catalogue);
    expect(questionsOf(next).map((question) => question.path)).toEqual(asked.filter((each) => each !== path));
    const assumed = (of: typeof whole) => leaves.reduce((sum, leaf) => sum + assumedOn(leaf, of), 0);
    expect(assumed(next)).toBe(assumed(whole) - 1);
  });

  it("takes an answer out again, and keeps everything when one cannot be written", () => {
    const without = answered(whole, [{ path: "duty.utilities.steam", typed: undefined }], catalogue);
    expect(without.text).not.toContain("steam");
    const refused = answered(whole, [{ path: "duty.tag.more", typed: "x" }], catalogue);
    expect(refused.refused).toMatch(/\w/);
    expect(refused.text).toBe(whole.text);
  });

  it("names its file by the tag", () => {
    expect(jobFileName("QL-1 North wing")).toBe("ql-1-north-wing.yaml");
    expect(jobFileName("…")).toBe("job.yaml");
  });
});

describe("the store of the enquiry", () => {
  it("keeps every answer for the next page, undoes, and forgets an enquiry that has become a job", () => {
    const storage = new Map<string, string>();
    const browser = {
      getItem: (key: string) => storage.get(key) ?? null,
      setItem: (key: string, value: string) => void storage.set(key, value),
      removeItem: (key: string) => void storage.delete(key),
    };
    const store = createEnquiryStore(catalogue, browser);
    store.getState().answer([{ path: "duty.tag", typed: "QL-1" }]);
    expect(createEnquiryStore(catalogue, browser).getState().enquiry.text).toContain("tag: QL-1");
    store.getState().clear();
    expect(store.getState().enquiry.text).toBe(blankText);
    store.getState().undo();
    expect(store.getState().enquiry.text).toContain("tag: QL-1");
    store.getState().finish();
    expect(storage.size).toBe(0);
  });
});

describe("a weather file", () => {
  it("gives place and design days of its header as answers that the duty reads", () => {
    // The layout that circulates, with invented values.
    const heating = "12,-11.8,-9.4,-17.5,0.9,-9.8,-15.1,1.1,-7.3,11.1,2.7,10.2,2.6,3.7,330";
    const cooling = "7,11.3,34.1,23.9,32.7,23.4,31.3,22.8,25.6,31.2,24.9,30.1,24.2,29,4.4,200,24.2,19.2,28.3";
    const design = `1,tables of 2009,,Heating,${heating},Cooling,${cooling}`;
    const found = daysOfWeatherFile(sampleEpw({ design }));
    if (!found.ok) throw new Error(found.problem);
    const next = answered(blank, found.answers, catalogue);
    expect(neededOn(leaves[1]!, next)).toEqual([]);
    // 34.1 °C is 93.4 °F, 100 m is 328 ft.
    expect(next.text).toMatch(/dry bulb day:\n\s+dry bulb: 93.4 °F/);
    expect(next.text).toContain("altitude: 328 ft");
    expect(daysOfWeatherFile(sampleEpw())).toMatchObject({
      ok: false,
      problem: expect.stringContaining("no design days"),
    });
    expect(found.words).toContain("no statistics of its hours");
  });
});
