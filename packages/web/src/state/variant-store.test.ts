import { describe, expect, it } from "vitest";
import { createVariantStore, nextVariantName, variantFile } from "./variant-store.ts";

function browser() {
  const held = new Map<string, string>();
  return {
    held,
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, value: string) => void held.set(key, value),
    removeItem: (key: string) => void held.delete(key),
  };
}

const file = variantFile({ origin: "server", name: "a.yaml" });

describe("variants", () => {
  it("are kept by file for the next page, give way to one of the same name, and are dropped", () => {
    const storage = browser();
    const { keep, drop } = createVariantStore(storage).getState();
    keep(file, { name: "deep coil", text: "one" });
    keep(file, { name: "two fans", text: "two" });
    keep(file, { name: "deep coil", text: "three" });
    const again = createVariantStore(storage);
    expect(again.getState().byFile.get(file)).toEqual([
      { name: "two fans", text: "two" },
      { name: "deep coil", text: "three" },
    ]);
    drop(file, "two fans");
    drop(file, "deep coil");
    expect(createVariantStore(storage).getState().byFile.size).toBe(0);
  });

  it("say when the browser has no room, and are then there as long as the page", () => {
    const full = {
      ...browser(),
      setItem: () => {
        throw new Error("full");
      },
    };
    const store = createVariantStore(full);
    expect(store.getState().keep(file, { name: "a", text: "b" })).toBe(false);
    expect(store.getState().byFile.get(file)).toHaveLength(1);
  });

  it("are not put off by what somebody else has written there", () => {
    for (const text of ["{", "7", '[["x"]]', '[["x",[{"name":1}]]]']) {
      const storage = browser();
      storage.setItem("oncethrough-variants", text);
      expect(createVariantStore(storage).getState().byFile.size).toBe(0);
    }
  });

  it("get a name that none has", () => {
    expect(nextVariantName([])).toBe("variant 1");
    expect(nextVariantName([{ name: "variant 2", text: "" }])).toBe("variant 3");
  });
});
