import { dewPointFromHumidityRatio } from "#fluid/dew-point";
import type { UnitSystem } from "#quantity/kind";
import { printNumber, printQuantity } from "#quantity/print";
import type { Air } from "#section/air";
import type { DisplayItem, DisplayList, TextItem } from "#section/display";
import { absolutePressure } from "#section/station";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";
import { type AirwayAxis, axisPoint, sectionSpan } from "./airway-axis.ts";
import { line, words } from "./items.ts";
import { LabelRoom } from "./label-room.ts";
import { type Course, coursePoints, type ProfilePanel, panelPoint, panelScale, profilePanel } from "./profile-panel.ts";
import { textWidth } from "./text-size.ts";

/** What the profiles are drawn on. */
export interface ProfileOptions {
  readonly axis: AirwayAxis;
  readonly system: UnitSystem;
  /** Other ratings of the same unit, drawn as ghosts of the static pressure: filters clean, at change-out. */
  readonly ghosts?: readonly { readonly words: string; readonly rating: UnitRating }[];
}

/** pt: the field of each panel. */
const fieldHeights = { temperature: 84, moisture: 54, pressure: 76 } as const;
/** pt between panels. */
const gap = 8;

/** The profiles, with the panels they stand on, so that a reader can be led to a point of a curve. */
export interface ProfileList extends DisplayList {
  readonly panels: {
    readonly temperature: ProfilePanel;
    readonly moisture: ProfilePanel;
    readonly pressure: ProfilePanel;
  };
}

/** Dry bulb with dew point, moisture and static pressure along the airway, on the axis of the elevation. */
export function profiles(unit: Unit, rating: UnitRating, options: ProfileOptions): ProfileList {
  const { axis, system, ghosts = [] } = options;
  const course = (value: (air: Air) => number) => courseOf(unit, rating, axis, value);
  const dryBulb = course((air) => air.dryBulb);
  const dewPoint = course((air) => dewPointFromHumidityRatio(air.humidityRatio, absolutePressure(air)));
  const moisture = course((air) => air.humidityRatio);
  const pressure = course((air) => air.staticPressure);
  const ghostCourses = ghosts.map((ghost) => ({
    words: ghost.words,
    course: courseOf(unit, ghost.rating, axis, (air) => air.staticPressure),
  }));
  const panels = panelsOf(axis, system, [dryBulb, dewPoint], moisture, [
    pressure,
    ...ghostCourses.map((ghost) => ghost.course),
  ]);
  const items = [
    ...temperatureItems(panels.temperature, dryBulb, dewPoint),
    ...moistureItems(panels.moisture, moisture, unit, rating),
    ...pressureItems(panels.pressure, pressure, ghostCourses, unit, rating),
  ];
  const box = { x: 0, y: 0, width: axisPoint(axis, axis.to), height: panels.pressure.bottom + 6 };
  return { title: `Profiles along the airway, ${rating.condition.name}`, unit: "pt", up: false, box, items, panels };
}

function panelsOf(
  axis: AirwayAxis,
  system: UnitSystem,
  temperatures: readonly Course[],
  moisture: Course,
  pressures: readonly Course[],
) {
  const below = (panel: ProfilePanel) => panel.bottom + gap;
  const temperature = profilePanel({
    key: "temperature",
    name: "Dry bulb and dew point",
    kind: "temperature",
    system,
    axis,
    top: 0,
    height: fieldHeights.temperature,
    courses: temperatures,
    narrowest: 10,
  });
  const moistures = profilePanel({
    key: "moisture",
    name: "Moisture",
    kind: "humidityRatio",
    system,
    axis,
    top: below(temperature),
    height: fieldHeights.moisture,
    courses: [moisture],
    narrowest: 0.004,
    holdsZero: true,
  });
  const statics = profilePanel({
    key: "pressure",
    name: "Static pressure",
    kind: "pressureDifference",
    system,
    axis,
    top: below(moistures),
    height: fieldHeights.pressure,
    courses: pressures,
    narrowest: 100,
    holdsZero: true,
  });
  return { temperature, moisture: moistures, pressure: statics };
}

/** The value at the planes of the airway: into and out of every section, from the edge of the picture to the other. */
function courseOf(unit: Unit, rating: UnitRating, axis: AirwayAxis, value: (air: Air) => number): Course {
  const positions = [axis.from];
  const values = [value(rating.outdoors)];
  unit.sections.forEach((section, index) => {
    const record = rating.sections[index]!;
    const { from, to } = sectionSpan(section);
    positions.push(from, to);
    values.push(value(record.entering), value(record.leaving));
  });
  positions.push(axis.to);
  values.push(value(rating.supply));
  return { positions, values };
}

function temperatureItems(panel: ProfilePanel, dryBulb: Course, dewPoint: Course): readonly DisplayItem[] {
  const above = coursePoints(panel, dryBulb);
  const below = coursePoints(panel, dewPoint);
  const band = [...above, ...reversed(below)];
  return [
    ...panelScale(panel),
    line("temperature-band", "hairline", band, { closed: true, fill: "heat", label: "between dry bulb and dew point" }),
    line("temperature-dew-point", "water", below, { label: "dew point" }),
    line("temperature-dry-bulb", "heat", above, { label: "dry bulb" }),
    ...temperatureNames(panel, dryBulb, dewPoint),
    ...temperatureFigures(panel, dryBulb, dewPoint),
  ];
}

/** Names and figures where the air comes in: in the band where there is room, else outside of it. */
function temperatureNames(panel: ProfilePanel, dryBulb: Course, dewPoint: Course): readonly DisplayItem[] {
  const left = panel.axis.gutter + 10;
  const [high, low] = [panelPoint(panel, dryBulb.values[0]!), panelPoint(panel, dewPoint.values[0]!)];
  const drySay = `dry bulb ${temperatureText(panel, dryBulb, 0)}`;
  const dewSay = `dew point ${temperatureText(panel, dewPoint, 0)}`;
  const isWide = low - high >= 17;
  const hasRoomAbove = high - panel.top >= 8;
  const beside = left + textWidth(dewSay, "small") + 14;
  const dry = isWide ? [left, high + 13] : hasRoomAbove ? [left, high - 5] : [beside, low + 13];
  return [
    words("temperature-dry-bulb-in", "heat", [dry[0]!, dry[1]!], drySay, { size: "small" }),
    words("temperature-dew-point-in", "water", [left, low + 13], dewSay, { size: "small" }),
  ];
}

/** Figures where the air goes out. */
function temperatureFigures(panel: ProfilePanel, dryBulb: Course, dewPoint: Course): readonly DisplayItem[] {
  const right = axisPoint(panel.axis, panel.axis.to);
  const end = { size: "small", anchor: "end" } as const;
  const [high, low] = [panelPoint(panel, dryBulb.values.at(-1)!), panelPoint(panel, dewPoint.values.at(-1)!)];
  return [
    words("temperature-dry-bulb-out", "heat", [right, high - 6], temperatureText(panel, dryBulb, -1), end),
    words("temperature-dew-point-out", "water", [right, low + 13], temperatureText(panel, dewPoint, -1), end),
  ];
}

function temperatureText(panel: ProfilePanel, course: Course, at: 0 | -1): string {
  return printNumber(course.values.at(at)!, "temperature", panel.system).replace("-", "−");
}

function moistureItems(panel: ProfilePanel, moisture: Course, unit: Unit, rating: UnitRating): readonly DisplayItem[] {
  const points = coursePoints(panel, moisture);
  const right = axisPoint(panel.axis, panel.axis.to);
  const field = [...points, right, panel.bottom, panel.axis.gutter, panel.bottom];
  const items: DisplayItem[] = [
    ...panelScale(panel),
    line("moisture-field", "hairline", field, { closed: true, fill: "moisture", label: "moisture of the air" }),
    line("moisture-line", "moisture", points, { label: "humidity ratio" }),
  ];
  rating.sections.forEach((record, index) => {
    const section = unit.sections[index]!;
    if (section.behaviour.role !== "cooling" || -record.waterToAir < 1e-6) return;
    const text = `${printQuantity(-record.waterToAir, "massFlow", panel.system)} of condensate`;
    const x = axisPoint(panel.axis, sectionSpan(section).to) + 46;
    const y = (panelPoint(panel, record.entering.humidityRatio) + panelPoint(panel, record.leaving.humidityRatio)) / 2;
    items.push(words(`moisture-condensate-${section.name}`, "moisture", [x, y], text, { size: "small" }));
  });
  return items;
}

function pressureItems(
  panel: ProfilePanel,
  pressure: Course,
  ghosts: readonly { readonly words: string; readonly course: Course }[],
  unit: Unit,
  rating: UnitRating,
): readonly DisplayItem[] {
  const room = new LabelRoom();
  const fan = fanWords(panel, unit, rating);
  for (const item of fan) room.takeText(item);
  const shadow = ghosts.flatMap(({ words: text, course }, index) => {
    const dash = index % 2 === 0 ? "short" : "long";
    return [
      line(`pressure-ghost-${index}`, "quiet", coursePoints(panel, course), {
        dash,
        label: `static pressure, ${text}`,
      }),
      ghostName(panel, room, `pressure-ghost-${index}-name`, text, pressure, course),
    ];
  });
  return [
    ...panelScale(panel),
    ...shadow,
    line("pressure-line", "strong", coursePoints(panel, pressure), { label: "static pressure" }),
    ...fan,
  ];
}

/** The name of a ghost beside the place where it parts from the curve, on its own side of it. */
function ghostName(
  panel: ProfilePanel,
  room: LabelRoom,
  key: string,
  text: string,
  pressure: Course,
  ghost: Course,
): DisplayItem {
  const parted = partingOf(pressure, ghost);
  const [value, beside] = [ghost.values[parted]!, pressure.values[parted]!];
  const [x, y] = [axisPoint(panel.axis, ghost.positions[parted]!), panelPoint(panel, value)];
  const dy = Math.min(value < beside ? 12 : -4, panel.bottom + 3 - y);
  const shifts = [5, 5 + textWidth(text, "small") + 40, -textWidth(text, "small") - 12];
  const place = room.place(
    x,
    y,
    text,
    "small",
    shifts.map((dx) => ({ dx, dy, anchor: "start" })),
  );
  return words(key, "quiet", [x + place.dx, y + place.dy], text, { size: "small" });
}

/** Index of the first place at which two courses are as far apart as they get, but for a twentieth. */
function partingOf(one: Course, other: Course): number {
  const apart = one.values.map((value, index) => Math.abs(value - other.values[index]!));
  const most = Math.max(...apart);
  return apart.findIndex((each) => each >= 0.95 * most);
}

function fanWords(panel: ProfilePanel, unit: Unit, rating: UnitRating): readonly TextItem[] {
  return rating.sections.flatMap((record, index) => {
    const section = unit.sections[index]!;
    if (section.behaviour.role !== "fan" || record.totalPressureLoss >= 0) return [];
    const text = `fan adds ${printQuantity(-record.totalPressureLoss, "pressureDifference", panel.system)}`;
    const x = axisPoint(panel.axis, sectionSpan(section).to) + 8;
    const y = panelPoint(panel, record.leaving.staticPressure) + 15;
    return [words(`pressure-fan-${section.name}`, "quiet", [x, y], text, { size: "small" })];
  });
}

/** Points in the opposite order. */
function reversed(points: readonly number[]): number[] {
  const result: number[] = [];
  for (let index = points.length - 2; index >= 0; index -= 2) result.push(points[index]!, points[index + 1]!);
  return result;
}
