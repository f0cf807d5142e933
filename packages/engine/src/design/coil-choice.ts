import type { Coil } from "#component/coil/coil";
import type { FinnedSurface } from "#component/finned-surface/family";
import type { ValuesOf } from "#form/field";
import {
  type chilledWaterCoilFields,
  chilledWaterConnection,
  prepareChilledWaterCoil,
} from "#section/chilled-water-coil/design";
import type { CoilBlock } from "#section/coil/block";
import { type Frame, SectionProblem } from "#section/contract";
import { type hotWaterCoilFields, hotWaterConnection, prepareHotWaterCoil } from "#section/hot-water-coil/design";

type CoolingValues = ValuesOf<typeof chilledWaterCoilFields>;
type HeatingValues = ValuesOf<typeof hotWaterCoilFields>;

/** A coil with liquid in its tubes as a job or a coil file says it. */
export type LiquidCoilValues =
  | ({ readonly kind: "chilled-water coil" } & CoolingValues)
  | ({ readonly kind: "hot-water coil" } & HeatingValues);

/** A coil and the same coil of other surfaces, each as its section builds it into the cabinet. */
export interface CoilBlocks {
  readonly cools: boolean;
  readonly present: CoilBlock;
  readonly blocks: readonly CoilBlock[];
  /** m: inside diameter of the connections of one coil. */
  readonly connectionOf: (coil: Coil) => number;
}

/**
 * Builds a coil as its section does, and once more for each of the surfaces; those that the cabinet does not take are left
 * out.
 *
 * @throws SectionProblem when the coil itself cannot be built
 */
export function coilBlocks(values: LiquidCoilValues, frame: Frame, surfaces: readonly FinnedSurface[]): CoilBlocks {
  const cools = values.kind === "chilled-water coil";
  const present = blockOf(values, frame);
  const blocks = surfaces.flatMap((surface) => {
    try {
      // One circuit for each tube of a row always divides; the circuits are varied afterwards.
      const correlation = surface.head.name === values.surface.head.name ? values.correlation : undefined;
      const free = {
        correlation,
        circuits: undefined,
        connectionEnds: "as the circuits give",
        length: undefined,
      } as const;
      return [blockOf({ ...values, surface, ...free }, frame)];
    } catch (problem) {
      if (problem instanceof SectionProblem) return [];
      throw problem;
    }
  });
  const { fullFlow } = values;
  const each = fullFlow === undefined ? undefined : fullFlow / present.stacked;
  const connection = cools ? chilledWaterConnection : hotWaterConnection;
  return { cools, present, blocks, connectionOf: (coil) => connection(coil, each).diameter };
}

function blockOf(values: LiquidCoilValues, frame: Frame): CoilBlock {
  return values.kind === "chilled-water coil"
    ? prepareChilledWaterCoil(values, frame).block
    : prepareHotWaterCoil(values, frame).block;
}
