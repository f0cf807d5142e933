import { coreLoss } from "../coil/loss.ts";
import type { Loss } from "../loss.ts";
import { airDensity } from "../station.ts";
import type { FaceBypassDesign } from "./design.ts";
import type { FaceBypassRating } from "./rate.ts";

/** The dearer of the two paths is what the section costs; the other one stands beside it. */
export function faceBypassLosses(design: FaceBypassDesign, rating: FaceBypassRating): readonly Loss[] {
  const density = airDensity(rating.entering);
  const lanes = { plane: "face", area: design.block.faceArea, velocity: rating.laneVelocity, density } as const;
  const face: Loss[] = [
    {
      ...coreLoss(design.block, rating),
      pressure: rating.dryLoss,
      part: "lanes, fins dry",
      ...lanes,
    },
    {
      part: "face dampers",
      pressure: rating.facePathLoss - rating.dryLoss,
      ...lanes,
      source: "common-practice 1.5 velocity pressures on the lanes' face",
    },
  ];
  const bypass: Loss[] = [
    {
      part: "bypass channels and dampers",
      pressure: rating.bypassPathLoss,
      plane: "bypass",
      area: design.bypassArea,
      velocity: rating.bypassVelocity,
      density,
      source: "common-practice velocity pressures in the channel as the job gives them",
    },
  ];
  const isBeside = true as const;
  return rating.facePathLoss >= rating.bypassPathLoss
    ? [...face, ...bypass.map((loss) => ({ ...loss, isBeside }))]
    : [...face.map((loss) => ({ ...loss, isBeside })), ...bypass];
}
