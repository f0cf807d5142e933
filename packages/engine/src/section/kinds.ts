import { access } from "./access/kind.ts";
import { attenuator } from "./attenuator/kind.ts";
import { chilledWaterCoil } from "./chilled-water-coil/kind.ts";
import { dischargePlenum } from "./discharge-plenum/kind.ts";
import { fan } from "./fan/kind.ts";
import { filterBank } from "./filter-bank/kind.ts";
import { hotWaterCoil } from "./hot-water-coil/kind.ts";
import { intakeHood } from "./intake-hood/kind.ts";
import { louver } from "./louver/kind.ts";
import { mixingBox } from "./mixing-box/kind.ts";
import { moistureEliminator } from "./moisture-eliminator/kind.ts";
import { recoveryCoil } from "./recovery-coil/kind.ts";
import { shutOffDamper } from "./shut-off-damper/kind.ts";
import { special } from "./special/kind.ts";
import { sprayGap } from "./spray-gap/kind.ts";
import { steamCoil } from "./steam-coil/kind.ts";
import { steamCoilFaceBypass } from "./steam-coil-face-bypass/kind.ts";
import { steamHumidifier } from "./steam-humidifier/kind.ts";

/** Every kind of section, in about the order in which air meets them. A new kind is one folder and one line here. */
export const sectionKinds = [
  intakeHood,
  louver,
  mixingBox,
  shutOffDamper,
  filterBank,
  recoveryCoil,
  steamCoil,
  steamCoilFaceBypass,
  hotWaterCoil,
  sprayGap,
  access,
  chilledWaterCoil,
  moistureEliminator,
  steamHumidifier,
  fan,
  attenuator,
  dischargePlenum,
  special,
] as const;
