import { ventPipe } from "#component/coil/drain-and-vent";
import { connectionSizes } from "#component/coil/liquid-pressure";
import type { BuildLine } from "../contract.ts";
import type { CoilBlock } from "./block.ts";
import { coilDrain, coilDrainTime } from "./connections.ts";
import { type SteamPiping, steamFittings } from "./steam.ts";

/** What any coil is to be built as, for whoever makes it. */
function coreBuild({ coil, stacked }: CoilBlock): readonly BuildLine[] {
  const { surface } = coil;
  return [
    { name: "coils, one above the other", quantity: "count", value: stacked },
    { name: "surface", text: surface.head.name },
    { name: "fins high, each", quantity: "length", value: coil.tubesPerRow * surface.transversePitch },
    { name: "fins long", quantity: "length", value: coil.finnedLength },
    { name: "rows", quantity: "count", value: coil.rows },
    { name: "circuits, each", quantity: "count", value: coil.circuits },
    { name: "fins", quantity: "pitch", value: coil.finsPerLength },
    { name: `fin thickness, ${coil.finMaterial}`, quantity: "smallLength", value: coil.finThickness },
    { name: `tube wall, ${coil.tubeMaterial}`, quantity: "smallLength", value: coil.tubeWall },
  ];
}

function nominal(bore: number): string {
  return connectionSizes.find(({ diameter }) => Math.abs(diameter - bore) < 1e-9)?.nominal ?? "special";
}

/** What a coil with liquid in its tubes is to be built as. */
export function liquidCoilBuild(design: {
  readonly block: CoilBlock;
  readonly connection: number;
}): readonly BuildLine[] {
  const { block, connection } = design;
  const { coil } = block;
  const ends = coil.passes % 2 === 1 ? "on opposite ends" : "on the same end";
  const minutes = Math.max(1, Math.round(coilDrainTime(coil, connection) / 60));
  return [
    ...coreBuild(block),
    { name: "connections, each", text: `${nominal(connection)}, supply at the foot and return at the top, ${ends}` },
    {
      name: "drain, each",
      text: `${coilDrain(coil, connection).nominal} with a valve at the foot of the supply header: empty in ${minutes} min`,
    },
    { name: "vent, each", text: `${ventPipe.nominal} at the top of the return header` },
  ];
}

/** What a coil on steam is to be built as. */
export function steamCoilBuild(design: SteamPiping): readonly BuildLine[] {
  const { connection, condensateConnection } = steamFittings(design);
  return [
    ...coreBuild(design.block),
    {
      name: "connections, each",
      text: `${nominal(connection)} steam at the top, ${nominal(condensateConnection)} condensate at the foot, on the same end`,
    },
    {
      name: "vacuum breaker, each",
      text: design.vacuumBreaker ? `${ventPipe.nominal} on the steam header, opens at ¼ inHg` : "none",
    },
    { name: "drop leg to the trap", quantity: "length", value: design.dropLeg },
    { name: "trap, each", text: `${design.trap}, one for each coil; piped on site, not in this price` },
  ];
}
