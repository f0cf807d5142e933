/** A step of the tour: where it points, and what is to be known there. */
export interface TourStep {
  /** What is pointed at. */
  readonly place: string;
  readonly title: string;
  readonly words: string;
}

/** The tour of the page, in the order in which an engineer meets it. */
export const tourSteps: readonly TourStep[] = [
  {
    place: ".airway",
    title: "The machine is the page",
    words:
      "A side view to scale, every section as what it is, air from left to right. Pick a section in the drawing, or with the arrow keys; what it does to the air stands straight below it.",
  },
  {
    place: ".condition-bar",
    title: "Days and filters",
    words:
      "Every condition of the duty is solved: design days, smallest flow, a stopped fan. Choose one here, and how loaded the filters are; drawing, profiles and figures follow.",
  },
  {
    place: ".part-panel",
    title: "The section in hand",
    words:
      "What is dotted and green is yours to change, where it stands, in any unit. Below it what follows; a figure with a line under it opens its arithmetic and its source.",
  },
  {
    place: ".lower",
    title: "What is not met",
    words:
      "Set points and rules that do not hold are listed with value, limit and the condition where it is worst. The job’s text stands beside: every edit of the page is an edit of that text, and can be undone.",
  },
  {
    place: ".price-bar",
    title: "Price and mass",
    words: "Always in sight, with what the last edit changed.",
  },
  {
    place: ".header-bar",
    title: "Begin, open, save",
    words:
      "New asks for a duty and sizes a unit from it. What you do is kept in this browser until you save, even when the page is closed.",
  },
];
