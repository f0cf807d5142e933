import type { Loss } from "../loss.ts";
import type { FanDesign } from "./design.ts";
import type { FanSectionRating } from "./rate.ts";

/** What the fans add, and what the air takes in coming to them and leaving them. */
export function fanLosses(design: FanDesign, rating: FanSectionRating): readonly Loss[] {
  const { density } = rating;
  const inlet = { plane: "fan inlet", area: design.inletArea, velocity: rating.inletVelocity, density } as const;
  const outlet = { plane: "fan outlet", area: design.outletArea, velocity: rating.outletVelocity, density } as const;
  const losses: Loss[] = [
    {
      part: "fan inlet: room before it",
      pressure: rating.inletEffectLoss,
      ...inlet,
      source: "amca-201 from memory",
    },
  ];
  if (design.backdraftDampers) {
    losses.push({
      part: "backdraft damper",
      pressure: rating.backdraftLossPressure,
      plane: "face",
      area: design.backdraftFace,
      velocity: rating.flowPerFan / design.backdraftFace,
      density,
      source: "from-memory velocity pressures on the damper's face as the job gives them",
    });
  }
  losses.push({
    part: rating.fanSpeed > 0 ? `fan total pressure${runningWords(rating)}` : "wheel that stands in the stream",
    pressure: -rating.fanTotalPressure,
    ...(design.housed ? outlet : inlet),
    source: "amca-99 laws of the fan, from the record's curve",
    isFan: true,
  });
  if (design.housed) {
    losses.push({
      part: "fan outlet: duct too short",
      pressure: rating.outletEffectLoss,
      ...outlet,
      source: "amca-201 from memory",
    });
  }
  return losses;
}

function runningWords({ fansRunning }: FanSectionRating): string {
  return fansRunning === 1 ? "" : `, ${fansRunning} fans side by side`;
}
