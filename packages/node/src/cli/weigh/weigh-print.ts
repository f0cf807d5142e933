import { displayUnit, printNumber } from "@oncethrough/engine/quantity/print";
import { separator, wrapped } from "../ink.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Column, printTable } from "../table.ts";
import { sayer } from "./say.ts";
import { printService } from "./service-print.ts";
import { printStructure } from "./structure-print.ts";
import type { PieceOutput, WeighOutput } from "./weigh-output.ts";

/** Masses by section, the whole, pieces with their lifting, corners, and what the structure feels. */
export function printWeight(output: WeighOutput, style: Style): string {
  const parts = [
    printWhole(output, style),
    printSections(output, style),
    printPieces(output, style),
    printCorners(output, style),
    ...printStructure(output, style),
    printService(output, style),
    printNotices(output, style),
  ];
  return parts.filter((part) => part !== "").join("\n\n");
}

function printWhole({ tag, size, dry, operating, loose }: WeighOutput, style: Style): string {
  const say = sayer(style);
  const { centre } = operating;
  const words = [
    `${say(size.x, "length")} long, ${say(size.y, "length")} wide, ${say(size.z, "length")} high with hood, rail and roof`,
    `${say(dry.mass, "mass")} dry`,
    `${say(operating.mass, "mass")} running`,
    ...(loose > 0 ? [`${say(loose, "mass")} of it ships loose`] : []),
    `centre of gravity ${say(centre.x, "length")} from the entry, ${say(centre.y, "length")} from the right wall, ${say(centre.z, "length")} above the floor`,
  ];
  return `${style.ink.strong(`${tag} · mass`)}\n${wrapped(words.join(separator), style.columns)}`;
}

function printSections({ sections, rest, dry, operating }: WeighOutput, { system, ink }: Style): string {
  const mass = displayUnit("mass", system);
  const columns: Column[] = [
    { name: "section", align: "left" },
    { name: "own parts", unit: mass, align: "right" },
    { name: "its casing", unit: mass, align: "right" },
    { name: "dry", unit: mass, align: "right" },
    { name: "water, dust", unit: mass, align: "right" },
    { name: "running", unit: mass, align: "right" },
  ];
  const say = (value: number) => (value === 0 ? "–" : printNumber(value, "mass", system));
  const rows = sections.map((section) => [
    section.section,
    say(section.parts),
    say(section.casing),
    ink.strong(say(section.dry)),
    say(section.carried),
    say(section.operating),
  ]);
  for (const { name, mass: each } of rest) rows.push([name, "", "", ink.strong(say(each)), "–", say(each)]);
  rows.push(["the whole", "", "", ink.strong(say(dry.mass)), say(operating.mass - dry.mass), say(operating.mass)]);
  return printTable(columns, rows, ink);
}

function printPieces({ pieces, cautions }: WeighOutput, style: Style): string {
  const { ink, columns } = style;
  const lines = pieces.map((piece) => pieceWords(piece, style));
  const caution = wrapped(`caution: ${cautions.lifting}`, columns);
  return [ink.quiet("shipping and lifting"), ...lines, ink.fail(caution)].join("\n");
}

function pieceWords(piece: PieceOutput, style: Style): string {
  const say = sayer(style);
  const lugs = piece.lugs.map(({ mass }) => say(mass, "mass"));
  const words = [
    piece.sections.join(", "),
    `${say(piece.size.x, "length")} × ${say(piece.size.y, "length")} × ${say(piece.size.z, "length")}`,
    `ships at ${say(piece.shippingMass, "mass")}`,
    `centre ${say(piece.centre.x, "length")}, ${say(piece.centre.y, "length")}, ${say(piece.centre.z, "length")}`,
    ...(lugs.length === 0
      ? ["no rail, no lugs: how it is lifted has to be settled"]
      : [
          `lugs carry ${lugs.join(", ")}`,
          `tension of a leg ${say(piece.legTension, "force")}, of two that carry it alone ${say(piece.twoLegTension, "force")}`,
          `spreaders take ${say(piece.spreaderForce, "force")}`,
        ]),
  ];
  return wrapped(`${piece.name}  ${words.join(separator)}`, style.columns, "         ");
}

function printCorners({ corners, rail }: WeighOutput, style: Style): string {
  const say = sayer(style);
  const names = ["entry right", "entry left", "exit right", "exit left"];
  const words = corners.map(({ mass }, index) => `${names[index]} ${say(mass, "mass")}`);
  const lines = [
    style.ink.quiet("standing, running"),
    wrapped(`corners  ${words.join(separator)}`, style.columns, "         "),
  ];
  if (rail !== undefined) {
    const bent = [
      `supports at most ${say(rail.span, "length")} apart`,
      `the rail under ${rail.section} gives ${say(rail.deflection, "smallLength")}, 1/${Math.round(rail.span / rail.deflection)} of the span`,
      `stress ${share(rail.stress / rail.allowed)} of what the steel takes, lifted ${share(rail.liftedStress / rail.allowed)} (${rail.liftedPiece})`,
    ];
    lines.push(wrapped(`rail     ${bent.join(separator)}`, style.columns, "         "));
  }
  return lines.join("\n");
}

function share(value: number): string {
  return `${(100 * value).toFixed(0)} %`;
}

function printNotices({ notices, unsolved }: WeighOutput, { ink, columns }: Style): string {
  const lines = notices.map(({ part, what, weight }) =>
    wrapped(`${part}: ${weight === "caution" ? "caution: " : ""}${what}`, columns, "  "),
  );
  if (unsolved.length > 0)
    lines.push(ink.fail(wrapped(`not solved, not counted: ${unsolved.join(", ")}`, columns, "  ")));
  return lines.length === 0 ? "" : [ink.quiet("to mind"), ...lines].join("\n");
}
