import type { TextItem } from "#section/display";

/** pt: heights of the three text sizes, wherever display lists are painted. */
export const textSizes: Readonly<Record<TextItem["size"], number>> = { small: 11, normal: 12.5, large: 15 };

/** Mean advance of a figure or a lower-case letter over the text height, for the sans-serif types that are used. */
const meanAdvance = 0.56;

/** pt: about how wide a text runs, to keep labels apart; no font is asked. */
export function textWidth(text: string, size: TextItem["size"]): number {
  return text.length * textSizes[size] * meanAdvance;
}
