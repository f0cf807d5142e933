import type { Rule } from "./contract.ts";
import { coolingRules } from "./cooling/cooling.ts";
import { fanRules } from "./fan/fan.ts";
import { intakeRules } from "./intake/intake.ts";
import { stallRules } from "./steam/stall.ts";
import { supplyRules } from "./supply/supply.ts";

/** Every rule, in about the order in which air meets what it judges. A new family is one folder and one line here. */
export const rules: readonly Rule[] = [...supplyRules, ...intakeRules, ...stallRules, ...coolingRules, ...fanRules];
