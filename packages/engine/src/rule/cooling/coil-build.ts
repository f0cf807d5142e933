import { dryAirPressureDrop } from "#component/coil/air-pressure";
import { sitePressure } from "#duty/standard-conditions";
import { specificVolume } from "#fluid/moist-air";
import { metresPerInch } from "#quantity/inch-pound";
import type { ChilledWaterCoilDesign } from "#section/chilled-water-coil/design";
import type { ChilledWaterCoilRating } from "#section/chilled-water-coil/rate";
import { conditionRule, type Mend, machineRule, type Rule } from "../contract.ts";
import { fpm, inchesOfWater } from "../inch-pound-limits.ts";
import { nextOfKind } from "../neighbour.ts";

const mend = (field: string, way: Mend["way"]): readonly Mend[] => [{ at: "section", field, way }];
const common = { of: ["chilled-water coil"], severity: "nuisance" } as const;

/** How the cooling coil is built, cleaned and fed. */
export const coolingBuildRules: readonly Rule[] = [
  conditionRule<ChilledWaterCoilDesign, ChilledWaterCoilRating>({
    ...common,
    id: "eliminator need",
    covers: ["CLG-08"],
    protects: "what stands behind the coil from thrown water",
    measures: "velocity on the wet face of a coil without eliminator",
    quantity: "velocity",
    sense: "at most",
    limit: fpm(400),
    source: "ufgs-15720n 2.2.8.3 eliminators above 400 fpm unless no carry-over is guaranteed",
    certainty: "read",
    contested:
      "400 fpm (facilities guide specification) against 500 to 550 (coil makers): a signed guarantee of no carry-over ends it",
    severity: "damage",
    remedy: "a moisture eliminator, a larger face, or the coil maker's guarantee",
    mends: mend("finnedHeight", "more"),
    value: ({ unit, index, record }) =>
      record.condensate > 0 && nextOfKind(unit, index, "moisture eliminator") < 0 ? record.faceVelocity : undefined,
  }),
  conditionRule<ChilledWaterCoilDesign, ChilledWaterCoilRating>({
    ...common,
    id: "even flow on the cooling coil",
    covers: ["CLG-32", "CLG-24"],
    protects: "the coil from local carry-over and streaks",
    measures: "highest local velocity over the mean before the coil",
    quantity: "factor",
    sense: "at most",
    limit: 1.25,
    source: "from-memory practice of 1.2 to 1.25",
    certainty: "from memory",
    severity: "damage",
    remedy: "more distance or resistance before the coil",
    mends: [{ at: { kind: "access" }, field: "length", way: "more" }],
    value: ({ record }) => record.entering.peakToMeanVelocity,
  }),
  machineRule<ChilledWaterCoilDesign>({
    ...common,
    id: "cleanable coil",
    covers: ["CLG-17"],
    protects: "the coil from dirt that nobody reaches",
    measures: "dry pressure loss of the block at 500 fpm, standard air",
    quantity: "pressureDifference",
    sense: "at most",
    limit: inchesOfWater(0.75),
    source: "ashrae-62-1 5.11 0.75 in.wg at 500 fpm, or 18 in of access between, from memory",
    certainty: "from memory",
    remedy: "fewer rows or wider fins, or two blocks with an access between",
    mends: [...mend("rows", "less"), ...mend("fins", "less")],
    value: ({ design, duty }) => {
      const { coil } = design.block;
      const pressure = sitePressure(duty);
      const flow = (fpm(500) * coil.bank.faceArea) / specificVolume(20, 0, pressure);
      return dryAirPressureDrop(coil, flow, 0, 20, 20, pressure);
    },
  }),
  machineRule<ChilledWaterCoilDesign>({
    ...common,
    id: "cooling coil rows",
    covers: ["CLG-18", "CLG-02", "CLG-03"],
    protects: "the coil from dirt in its middle",
    measures: "rows of tubes in one block",
    quantity: "count",
    sense: "at most",
    limit: 8,
    source: "usace-design-guide 8 rows at 12 fins per inch",
    certainty: "read",
    contested:
      "6 rows at 8 fins per inch, then a second block behind an access (a hospital); at least 6 rows at 12 (Navy); 8 at 12 (Army); at most 10 fins per inch (a campus)",
    remedy: "two blocks with an access between",
    mends: mend("rows", "less"),
    value: ({ design }) => design.block.coil.rows,
  }),
  machineRule<ChilledWaterCoilDesign>({
    ...common,
    id: "cooling coil fins",
    isChosen: true,
    covers: ["CLG-18"],
    protects: "the coil from clogging and from holding water",
    measures: "fins along the tubes",
    quantity: "pitch",
    sense: "at most",
    limit: 12 / metresPerInch + 1e-6,
    source: "usace-design-guide 12 fins per inch",
    certainty: "read",
    contested: "8 (a hospital), 10 (a campus), 12 (Army, Navy) fins per inch",
    remedy: "wider fins and more rows",
    mends: mend("fins", "less"),
    value: ({ design }) => design.block.coil.finsPerLength,
  }),
  conditionRule<ChilledWaterCoilDesign, ChilledWaterCoilRating>({
    ...common,
    id: "water velocity in the tubes",
    covers: ["CLG-19"],
    protects: "tubes from erosion",
    measures: "velocity in the tubes at the load",
    quantity: "liquidVelocity",
    sense: "at most",
    limit: 6 * 0.3048,
    source: "hospital-master-specification 4 to 6 ft/s",
    certainty: "read",
    severity: "damage",
    remedy: "more circuits",
    mends: mend("circuits", "more"),
    value: ({ record }) => (record.liquidMassFlow > 0 ? record.tubeVelocity : undefined),
  }),
  conditionRule<ChilledWaterCoilDesign, ChilledWaterCoilRating>({
    ...common,
    id: "water pressure drop",
    covers: ["CLG-19", "CLG-02"],
    protects: "the pump's energy",
    measures: "pressure drop of the water through the coil",
    quantity: "liquidPressureDrop",
    sense: "at most",
    limit: 20 * 2989.07,
    source: "hospital-master-specification 20 ft a coil; the Army's guide has 15",
    certainty: "read",
    severity: "shortfall",
    remedy: "more circuits",
    mends: mend("circuits", "more"),
    value: ({ record }) => (record.liquidMassFlow > 0 ? record.liquidPressureDrop : undefined),
  }),
  conditionRule<ChilledWaterCoilDesign, ChilledWaterCoilRating>({
    ...common,
    id: "turbulent water at small load",
    covers: ["CLG-20"],
    protects: "control at small load: capacity falls off at once when the flow turns laminar",
    measures: "Reynolds number in the tubes",
    quantity: "count",
    sense: "at least",
    limit: 2300,
    source: "from-memory warn below 2300 to 3000",
    certainty: "from memory",
    remedy: "fewer circuits, or turbulators",
    mends: mend("circuits", "less"),
    value: ({ record }) => (record.liquidMassFlow > 0 ? record.tubeReynolds : undefined),
  }),
];
