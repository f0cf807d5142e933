import { type Loss, recordSource } from "../loss.ts";
import type { LouverDesign } from "./design.ts";
import type { LouverRating } from "./rate.ts";

/** Blades on the free-area velocity, and the screen behind them on the face's. */
export function louverLosses(design: LouverDesign, rating: LouverRating): readonly Loss[] {
  const { density } = rating;
  const blades: Loss = {
    part: "louver blades",
    pressure: rating.louverLoss,
    plane: "free",
    area: design.freeArea,
    velocity: rating.freeVelocity,
    density,
    source: recordSource(design.louver.head),
  };
  if (design.screen === undefined) return [blades];
  const screen: Loss = {
    part: "bird screen",
    pressure: rating.screenLoss,
    plane: "approach",
    area: design.faceArea,
    velocity: rating.faceVelocity,
    density,
    source: "blevins-1984 round-edged wire screen",
  };
  return [blades, screen];
}
