import { describe, expect, it } from "vitest";
import { LabelRoom, placesAround } from "./label-room.ts";
import { textWidth } from "./text-size.ts";

describe("room for labels", () => {
  it("takes the first place that is free, and the first of all when none is", () => {
    const room = new LabelRoom();
    expect(room.place(100, 100, "coil", "small", placesAround)).toBe(placesAround[0]);
    expect(room.place(100, 100, "fan", "small", placesAround)).toBe(placesAround[1]);
    const crowded = new LabelRoom();
    crowded.take(-1e3, -1e3, 1e3, 1e3);
    expect(crowded.place(0, 0, "coil", "small", placesAround)).toBe(placesAround[0]);
  });

  it("keeps labels at neighbouring points apart", () => {
    const room = new LabelRoom();
    const first = room.place(0, 0, "mixed air", "normal", placesAround);
    const second = room.place(20, 0, "outside air", "normal", placesAround);
    expect(first.anchor).toBe("start");
    // To the right of the second point is nothing; the first's label reaches under it, so right is not free for it.
    expect(textWidth("mixed air", "normal")).toBeGreaterThan(20);
    expect(second).not.toBe(first);
  });
});
