import type { Pencil } from "../pencil.ts";
import type { CoilBlock } from "./block.ts";
import { casingBottom } from "./drawing.ts";

/** Steam in at the top of each coil, condensate out at its foot through a drop leg to scale, with trap and vacuum breaker. */
export function drawSteamPiping(pencil: Pencil, block: CoilBlock, dropLeg: number, vacuumBreaker: boolean): void {
  const right = (block.start + block.casingDepth) * 1000;
  const riser = right + 70;
  const top = casingBottom(block, block.stacked - 1) + block.casingHeight * 1000;
  for (let index = 0; index < block.stacked; index++) {
    const bottom = casingBottom(block, index);
    const inlet = bottom + block.casingHeight * 1000 - 70;
    pencil.line("steam supply", "steam", [right, inlet, riser, inlet], { label: "steam supply" });
    const outlet = bottom + 40;
    const leg = right + 30 + 14 * (block.stacked - 1 - index);
    const trap = outlet - dropLeg * 1000;
    pencil.line("drop leg", "steam", [right, outlet, leg, outlet, leg, trap], { label: "drop leg to the trap" });
    pencil.circle("trap", "steam", leg, trap - 22, 22, { fill: "paper", label: "trap" });
    pencil.line("trap", "steam", [leg - 10, trap - 32, leg + 10, trap - 12]);
  }
  pencil.line("steam main", "steam", [riser, casingBottom(block, 0) + block.casingHeight * 1000 - 70, riser, top + 40]);
  if (!vacuumBreaker) return;
  const x = right + 35;
  const y = top - 70;
  pencil.line("vacuum breaker", "fine", [x, y, x, y + 55]);
  pencil.line("vacuum breaker", "fine", [x - 12, y + 55, x + 12, y + 55, x, y + 78], {
    closed: true,
    label: "vacuum breaker",
  });
}
