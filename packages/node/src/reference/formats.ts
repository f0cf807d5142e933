import { coilBasics } from "./coil-basics.ts";
import { coilCooling, coilHeating } from "./coil-cases.ts";
import { coilCorrelations } from "./coil-correlations.ts";
import type { Format } from "./format.ts";
import { glycol } from "./glycol.ts";
import { moistAirGrid } from "./moist-air-grid.ts";
import { saturationTable } from "./saturation-table.ts";
import { waterSteam } from "./water-steam.ts";

/** Every kind of file that can be run. A new kind is a file of its own and a line here. */
export const formats: readonly Format[] = [
  moistAirGrid,
  saturationTable,
  waterSteam,
  glycol,
  coilCooling,
  coilHeating,
  coilBasics,
  coilCorrelations,
];
