import { createAir } from "#section/air";
import type { Opening, SectionKind, SectionRating, SectionRole } from "#section/contract";
import type { DisplayItem, DisplayList } from "#section/display";
import { boxOf, type WallPart } from "#section/part";
import { sampleCondition, sampleOperation } from "#section/sample.test-data";
import { usualCasingBuild } from "#unit/casing-build.test-data";
import type { UnitRating } from "#unit/rating";
import type { Unit, UnitSection } from "#unit/unit";

/** A unit with sections of no real kind, for pictures whose every number is known: hood, mixing box, coil, fan. */
export function sampleUnit(): Unit {
  const sections = [
    section("intake hood", 0, 0, { outside: 1, walls: [collar("outside", "entry", boxOf(0, 0, 0, 0, 2.4, 2))] }),
    section("mixing box", 0, 1.2, {
      role: "mixing",
      openings: [{ air: "return", face: "top", from: 0.3, to: 0.7 }],
      walls: [collar("return", "top", boxOf(0.3, 0.4, 2, 0.4, 1.6, 0))],
    }),
    section("cooling coil", 1.2, 0.2, { role: "cooling" }),
    section("fan", 1.4, 2.6, {
      role: "fan",
      walls: [collar("supply", "exit", boxOf(2.6, 0.4, 0.6, 0, 1.6, 0.8))],
    }),
  ];
  const casing = {
    width: 2.4,
    height: 2,
    connectionHand: "right",
    panelThickness: 0.05,
    innerSkin: "solid",
    ...usualCasingBuild,
    railHeight: 0.2,
    leakageClass: 3,
  } as const;
  return { frame: { width: 2.4, height: 2, hand: "right" }, casing, sections, length: 4 };
}

interface SampleOptions {
  readonly role?: SectionRole;
  readonly outside?: number;
  readonly openings?: readonly Opening[];
  readonly walls?: readonly WallPart[];
}

function collar(air: NonNullable<WallPart["air"]>, face: WallPart["face"], box: WallPart["box"]): WallPart {
  return { key: `${air} opening`, name: `${air} opening`, kind: "collar", face, air, box };
}

function section(name: string, start: number, length: number, options: SampleOptions): UnitSection {
  const { role, outside = 0, openings = [], walls = [] } = options;
  const parts = () => ({ inside: [], walls });
  const behaviour = {
    name,
    ...(role === undefined ? {} : { role }),
    picture: crossPicture,
    parts,
  } as unknown as SectionKind;
  return {
    name,
    kind: name,
    behaviour,
    values: {},
    design: { length, outside },
    layout: { length, outside, openings },
    start,
  };
}

/** A line from the entry plane's floor to the exit plane at 1 m, and its name's first letter at the middle. */
function crossPicture(design: unknown, _frame: unknown, name: string): readonly DisplayItem[] {
  const { length, outside } = design as { length: number; outside: number };
  const end = 1000 * (length + outside);
  return [
    {
      shape: "line",
      key: `${name} line`,
      ink: "outline",
      reference: { section: name },
      points: [0, 0, end, 1000],
    },
    { shape: "circle", key: `${name} hub`, ink: "fine", reference: { section: name }, x: end / 2, y: 500, radius: 100 },
  ];
}

/** A rating of the sample unit: warm outdoor air mixed, cooled to saturation, warmed by the fan. */
export function sampleRating(staticLoss = 300): UnitRating {
  const air = (dryBulb: number, humidityRatio: number, staticPressure: number) =>
    Object.assign(createAir(), { dryAirFlow: 9, dryBulb, humidityRatio, staticPressure, coldestFilament: dryBulb });
  const outdoors = air(34, 0.018, 0);
  const leaving = [
    air(34, 0.018, -20),
    air(32, 0.0165, -60),
    air(11, 0.0081, -60 - staticLoss),
    air(12.5, 0.0081, 640),
  ];
  const losses = [20, 40, staticLoss, -700 - staticLoss];
  const sections = leaving.map(
    (each, index): SectionRating => ({
      entering: index === 0 ? outdoors : leaving[index - 1]!,
      leaving: each,
      totalPressureLoss: losses[index]!,
      heatToAir: 0,
      waterToAir: index === 2 ? -9 * 0.0084 : 0,
      waterEnthalpyToAir: 0,
      faceVelocity: 0,
    }),
  );
  return {
    condition: sampleCondition(),
    operation: sampleOperation(),
    outdoors,
    sections,
    between: leaving,
    leakage: new Float64Array(leaving.length),
    drained: new Float64Array(leaving.length),
    supply: leaving.at(-1)!,
    supplyActualAirflow: 8,
    supplyStandardAirflow: 7.5,
    outsideAirShare: 0.85,
    externalStaticNeeded: 640,
    externalStaticHeld: 640,
    fanElectricPower: 14_000,
    solved: true,
    reason: "",
    walks: 1,
  };
}

/** A display list as text, an item per line, numbers to a tenth: to be committed and compared. */
export function listText(list: DisplayList): string {
  const number = (value: number) => String(Math.round(value * 10) / 10 + 0);
  const { x, y, width, height } = list.box;
  const head = `${list.title}; ${list.unit}, y ${list.up ? "up" : "down"}; box ${[x, y, width, height].map(number).join(" ")}`;
  const lines = list.items.map((item) => {
    const start = `${item.key} | ${item.shape} ${item.ink}`;
    if (item.shape === "text")
      return `${start} ${item.size} ${item.anchor} | ${number(item.x)} ${number(item.y)} | ${item.text}`;
    if (item.shape === "circle") return `${start} | ${[item.x, item.y, item.radius].map(number).join(" ")}`;
    const ends = `${item.closed === true ? " closed" : ""}${item.fill === undefined ? "" : ` fill ${item.fill}`}${item.dash === undefined ? "" : ` ${item.dash}`}${item.tone === undefined ? "" : ` tone ${item.tone}`}`;
    return `${start}${ends} | ${item.points.map(number).join(" ")}`;
  });
  return `${[head, ...lines].join("\n")}\n`;
}
