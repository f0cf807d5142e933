import { metresPerInch } from "#quantity/inch-pound";
import type { SteamCoilDesign } from "#section/steam-coil/design";
import type { SteamCoilRating } from "#section/steam-coil/rate";
import { conditionRule, type Mend, machineRule, type Rule } from "../contract.ts";
import { fpm, inches } from "../inch-pound-limits.ts";
import { steamCoilKinds } from "./stall.ts";

type Build = Pick<SteamCoilDesign, "block" | "dropLeg" | "vacuumBreaker" | "trap">;

const mend = (field: string, way: Mend["way"]): readonly Mend[] => [{ at: "section", field, way }];
const common = { of: steamCoilKinds, severity: "damage", protects: "tubes from standing condensate" } as const;

/** How a steam coil is built and piped. Steam presses and burns: local codes and licensed practice decide the piping. */
export const steamBuildRules: readonly Rule[] = [
  machineRule<Build>({
    ...common,
    id: "steam coil rows",
    covers: ["STM-04", "STM-03"],
    measures: "rows of tubes",
    quantity: "count",
    sense: "at most",
    limit: 2,
    source: "hospital-master-specification steam coils",
    certainty: "read",
    remedy: "fewer rows",
    mends: mend("rows", "less"),
    value: ({ design }) => design.block.coil.rows,
  }),
  machineRule<Build>({
    ...common,
    id: "steam coil fins",
    isChosen: true,
    covers: ["STM-04"],
    measures: "fins along the tubes",
    quantity: "pitch",
    sense: "at most",
    limit: 8 / metresPerInch + 1e-6,
    source: "hospital-master-specification steam coils, 8 per inch",
    certainty: "read",
    remedy: "wider fins",
    mends: mend("fins", "less"),
    value: ({ design }) => design.block.coil.finsPerLength,
  }),
  conditionRule<Build, SteamCoilRating>({
    ...common,
    id: "heating face velocity",
    covers: ["STM-05"],
    protects: "the fan's energy",
    measures: "velocity on the heating coil's face",
    quantity: "velocity",
    sense: "at most",
    limit: fpm(750),
    source: "gsa-p100 heating coils 750 fpm",
    certainty: "read",
    contested: "550 fpm (VA), 750 (GSA)",
    severity: "nuisance",
    remedy: "a larger coil face",
    mends: mend("finnedHeight", "more"),
    value: ({ record }) => record.faceVelocity,
  }),
  machineRule<Build>({
    ...common,
    id: "drop leg to the steam trap",
    isChosen: true,
    covers: ["STM-06"],
    measures: "height from the coil's outlet down to the trap",
    quantity: "length",
    sense: "at least",
    limit: inches(12),
    source: "steam-coil-guide at least 12 in; 3 ft for each psi that the trap needs",
    certainty: "read",
    remedy: "a longer drop leg: a higher coil or rail",
    mends: mend("dropLeg", "more"),
    value: ({ design }) => design.dropLeg,
  }),
  machineRule<Build>({
    ...common,
    id: "vacuum breaker",
    covers: ["STM-08"],
    measures: "a vacuum breaker on the coil",
    quantity: "flag",
    sense: "at least",
    limit: 1,
    source: "steam-coil-guide swing check that opens by ¼ inHg",
    certainty: "read",
    remedy: "a vacuum breaker",
    mends: mend("vacuumBreaker", "other"),
    value: ({ design }) => (design.vacuumBreaker ? 1 : 0),
  }),
  machineRule<Build>({
    ...common,
    id: "float and thermostatic trap",
    covers: ["STM-07"],
    measures: "a float and thermostatic trap",
    quantity: "flag",
    sense: "at least",
    limit: 1,
    source: "steam-coil-guide kind of trap",
    certainty: "read",
    remedy: "a float and thermostatic trap, one for each coil",
    mends: mend("trap", "other"),
    value: ({ design }) => (design.trap === "float and thermostatic" ? 1 : 0),
  }),
];
