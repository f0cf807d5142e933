import { inOctaveBands } from "#component/sound-path";
import type { SectionSound } from "../contract.ts";
import type { MixingBoxDesign } from "./design.ts";

/** Sound that comes against the airflow is shared between the two dampers by the areas of their faces. */
export function mixingBoxSound(design: MixingBoxDesign): SectionSound {
  const none = inOctaveBands(() => 0);
  const certainty = "from memory";
  const source = "ashrae-applications-noise-vibration branch by area";
  const back = design.returnOpening?.part.area;
  if (back === undefined) return { downstream: none, upstream: none, source, certainty };
  const both = design.outside.area + back;
  const lossTo = (area: number) => inOctaveBands(() => 10 * Math.log10(both / area));
  return { downstream: none, upstream: lossTo(design.outside.area), toReturn: lossTo(back), source, certainty };
}
