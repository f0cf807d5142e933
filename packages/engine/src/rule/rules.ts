import { casingRules } from "./casing/casing.ts";
import type { Rule } from "./contract.ts";
import { coolingBuildRules } from "./cooling/coil-build.ts";
import { coolingRules } from "./cooling/cooling.ts";
import { damperRules } from "./damper/damper.ts";
import { drainRules } from "./drain/drain.ts";
import { energyRules } from "./energy/energy.ts";
import { fanRules } from "./fan/fan.ts";
import { fanBuildRules } from "./fan/fan-build.ts";
import { filterRules } from "./filter/filter.ts";
import { freezeRules } from "./freeze/freeze.ts";
import { intakeRules } from "./intake/intake.ts";
import { louverRules } from "./louver/louver.ts";
import { panRules } from "./pan/pan.ts";
import { serviceRules } from "./service/service.ts";
import { shippingRules } from "./shipping/shipping.ts";
import { sitingRules } from "./siting/siting.ts";
import { soundRules } from "./sound/sound.ts";
import { steamBuildRules } from "./steam/coil-build.ts";
import { stallRules } from "./steam/stall.ts";
import { supplyRules } from "./supply/supply.ts";
import { vibrationRules } from "./vibration/vibration.ts";

/** Rules that belong together, under a name for people. */
export interface Family {
  readonly name: string;
  readonly rules: readonly Rule[];
}

/** Every family, in about the order in which air meets what it judges. A new one is one folder and one line here. */
export const families: readonly Family[] = [
  { name: "supply", rules: supplyRules },
  { name: "siting", rules: sitingRules },
  { name: "intake and snow", rules: intakeRules },
  { name: "louver", rules: louverRules },
  { name: "dampers and mixing", rules: damperRules },
  { name: "filters", rules: filterRules },
  { name: "steam", rules: [...stallRules, ...steamBuildRules] },
  { name: "frost", rules: freezeRules },
  { name: "cooling", rules: [...coolingRules, ...coolingBuildRules] },
  { name: "pans", rules: panRules },
  { name: "drains", rules: drainRules },
  { name: "fan, motor and drive", rules: [...fanRules, ...fanBuildRules] },
  { name: "vibration", rules: vibrationRules },
  { name: "casing", rules: casingRules },
  { name: "doors and service", rules: serviceRules },
  { name: "sound", rules: soundRules },
  { name: "shipping and site", rules: shippingRules },
  { name: "energy", rules: energyRules },
];

/** Every rule. */
export const rules: readonly Rule[] = families.flatMap((family) => family.rules);
