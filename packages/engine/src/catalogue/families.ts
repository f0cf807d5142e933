import { attenuatorFamily } from "#component/attenuator";
import { beltDriveFamily } from "#component/belt-drive";
import { damperFamily } from "#component/damper";
import type { RecordHead } from "#component/family";
import { fanWheelFamily } from "#component/fan-wheel";
import { filterMediumFamily } from "#component/filter-medium";
import { finnedSurfaceFamily } from "#component/finned-surface/family";
import { louverFamily } from "#component/louver";
import { moistureEliminatorFamily } from "#component/moisture-eliminator";
import { motorFamily } from "#component/motor";
import { speedControlFamily } from "#component/speed-control";
import { springFamily } from "#component/spring";
import { steamDispersionFamily } from "#component/steam-dispersion";
import { wireScreenFamily } from "#component/wire-screen";
import type { Fields } from "#form/field";

/** A family whose record type is not known where it is used: its `build` is given what its own fields read. */
export interface AnyFamily {
  readonly name: string;
  readonly meaning: string;
  readonly fields: Fields;
  readonly build: (values: never, head: RecordHead) => { readonly head: RecordHead };
}

/** Every family of components that a catalogue file can hold. */
export const componentFamilies: readonly AnyFamily[] = [
  attenuatorFamily,
  damperFamily,
  filterMediumFamily,
  finnedSurfaceFamily,
  louverFamily,
  moistureEliminatorFamily,
  steamDispersionFamily,
  wireScreenFamily,
  beltDriveFamily,
  fanWheelFamily,
  motorFamily,
  speedControlFamily,
  springFamily,
];
