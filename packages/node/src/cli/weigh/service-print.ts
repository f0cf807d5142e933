import { displayUnit, printNumber } from "@oncethrough/engine/quantity/print";
import { separator, wrapped } from "../ink.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Column, printTable } from "../table.ts";
import { sayer } from "./say.ts";
import type { WeighOutput } from "./weigh-output.ts";

/** Room kept clear, doors, windows, restraints, finish. */
export function printService({ service, cautions }: WeighOutput, style: Style): string {
  const { ink, columns } = style;
  const electrical = service.spaces.some(({ use }) => use === "electrical working space");
  const lines = [...spaceLines(service, style), ...doorLines(service, style), ...restraintLines(service)];
  return [
    ink.quiet("service"),
    ...lines.map((line) => wrapped(line, columns, "  ")),
    ...(electrical ? [ink.fail(wrapped(`caution: ${cautions.electrical}`, columns))] : []),
    "",
    printFinish(service, style),
  ].join("\n");
}

type Service = WeighOutput["service"];

function spaceLines({ spaces }: Service, style: Style): readonly string[] {
  const say = sayer(style);
  const pulls = spaces.filter(({ use }) => use === "coil pull");
  const words = (space: (typeof spaces)[number]) =>
    `${space.section} ${say(space.size.y, "length")} to the ${space.side}, ${say(space.size.x, "length")} along`;
  const electrical = spaces.filter(({ use }) => use === "electrical working space");
  return [
    ...(pulls.length === 0 ? [] : [`coil pull: ${pulls.map(words).join(separator)}`]),
    ...electrical.map(
      ({ name, size, source }) =>
        `${name}: ${say(size.y, "length")} deep, ${say(size.x, "length")} wide, ${say(size.z, "length")} high (${source})`,
    ),
  ];
}

function doorLines({ doors, sights }: Service, style: Style): readonly string[] {
  const say = sayer(style);
  const words = doors.map(
    ({ section, opens, hinges, width, opensTo }) =>
      `${section} ${say(width, "length")} ${opens}, hinged ${hinges}, to ${opensTo}°`,
  );
  const seen = sights.filter(({ clear }) => clear).map(({ to }) => to);
  return [
    ...(words.length === 0 ? [] : [`doors: ${words.join(separator)}`]),
    ...(sights.length === 0 ? [] : [`seen through windows: ${seen.length === 0 ? "nothing" : seen.join(separator)}`]),
  ];
}

function restraintLines({ shippingRestraints }: Service): readonly string[] {
  return shippingRestraints.map(
    ({ section, count }) => `${section}: ${count} shipping restraints come off before its fans are started`,
  );
}

function printFinish({ finish, fasteners }: Service, { system, ink, columns }: Style): string {
  const heads: Column[] = [
    { name: "face", align: "left" },
    { name: "metal", align: "left" },
    { name: "gauge", align: "left" },
    { name: "coat", align: "left" },
    { name: "area", unit: displayUnit("area", system), align: "right" },
  ];
  const rows = finish.map(({ face, metal, gauge, coat, area }) => [
    face,
    metal,
    gauge,
    coat,
    printNumber(area, "area", system),
  ]);
  const counts = fasteners.map(({ what, count }) => `about ${count} ${what}`);
  return `${printTable(heads, rows, ink)}\n${wrapped(counts.join(separator), columns)}`;
}
