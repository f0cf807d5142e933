import { access } from "./access/kind.ts";
import { dischargePlenum } from "./discharge-plenum/kind.ts";
import { fan } from "./fan/kind.ts";
import { filterBank } from "./filter-bank/kind.ts";
import { intakeHood } from "./intake-hood/kind.ts";
import { louver } from "./louver/kind.ts";
import { mixingBox } from "./mixing-box/kind.ts";
import { moistureEliminator } from "./moisture-eliminator/kind.ts";
import { shutOffDamper } from "./shut-off-damper/kind.ts";
import { special } from "./special/kind.ts";
import { sprayGap } from "./spray-gap/kind.ts";
import { steamHumidifier } from "./steam-humidifier/kind.ts";

/** Every kind of section, in about the order in which air meets them. A new kind is one folder and one line here. */
export const sectionKinds = [
  intakeHood,
  louver,
  mixingBox,
  shutOffDamper,
  filterBank,
  sprayGap,
  access,
  moistureEliminator,
  steamHumidifier,
  fan,
  dischargePlenum,
  special,
] as const;
