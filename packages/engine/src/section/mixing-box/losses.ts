import type { DamperPart } from "../damper-part.ts";
import type { Loss } from "../loss.ts";
import type { MixingBoxDesign, ReturnOpening } from "./design.ts";
import type { MixingBoxRating } from "./rate.ts";

/** The outside damper in its wall; beside it the return path, which ends at the same plenum pressure. */
export function mixingBoxLosses(design: MixingBoxDesign, rating: MixingBoxRating): readonly Loss[] {
  const head = 0.5 * rating.outsideDensity * rating.outsideVelocity * rating.outsideVelocity;
  const face = faceOf(design.outside, rating.outsideVelocity, rating.outsideDensity);
  const outside: Loss[] = [
    {
      part: "outside-air damper",
      pressure: rating.outsideBladeLoss * head,
      ...face,
      source: "ashrae-825-rp exponential law with quadratics at the ends",
      bladeAngle: rating.outsideBladeAngle,
    },
    {
      part: "wall around it",
      pressure: design.wallLoss * head,
      ...face,
      source: "idelchik-handbook sum of sudden contraction and sudden expansion",
    },
  ];
  return design.returnOpening === undefined ? outside : [...outside, ...returnLosses(design.returnOpening, rating)];
}

function returnLosses({ part, inwardLoss, outwardLoss }: ReturnOpening, rating: MixingBoxRating): readonly Loss[] {
  const isInward = rating.returnVelocity >= 0;
  const sign = isInward ? 1 : -1;
  const head = 0.5 * rating.returnDensity * rating.returnVelocity * rating.returnVelocity;
  const face = faceOf(part, rating.returnVelocity, rating.returnDensity);
  return [
    {
      part: "return-air damper",
      pressure: sign * rating.returnBladeLoss * head,
      ...face,
      source: "ashrae-825-rp exponential law with quadratics at the ends",
      bladeAngle: rating.returnBladeAngle,
      isBeside: true,
    },
    {
      part: isInward ? "return air into the box" : "air out through the return opening",
      pressure: sign * (isInward ? inwardLoss : outwardLoss) * head,
      ...face,
      source: isInward ? "definition all the velocity pressure" : "idelchik-handbook sharp contraction",
      isBeside: true,
    },
  ];
}

function faceOf(part: DamperPart, velocity: number, density: number) {
  return { plane: "face", area: part.area, velocity, density } as const;
}
