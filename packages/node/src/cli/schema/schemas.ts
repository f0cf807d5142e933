import { jobSchema } from "@oncethrough/engine/job/schema";
import { airSchema } from "../air/air-schema.ts";
import { checkSchema } from "../check/check-schema.ts";
import { alternativesSchema } from "../coil/alternatives-schema.ts";
import { coilSchema } from "../coil/coil-schema.ts";
import type { schemaNames } from "../command-table.ts";
import { dampersSchema } from "../dampers/dampers-schema.ts";
import { designSchema } from "../design/design-schema.ts";
import { drawSchema } from "../draw/draw-schema.ts";
import { fanSchema } from "../fan/fan-schema.ts";
import { fitSurfaceSchema } from "../fit-surface/fit-surface-schema.ts";
import { importFanSchema } from "../import-fan/import-fan-schema.ts";
import { priceSchema } from "../price/price-schema.ts";
import { rateSchema } from "../rate/rate-schema.ts";
import { readSchema } from "../read/read-schema.ts";
import { soundSchema } from "../sound/sound-schema.ts";
import { takeoffSchema } from "../takeoff/takeoff-schema.ts";
import { weatherSchema } from "../weather/weather-schema.ts";
import { weighSchema } from "../weigh/weigh-schema.ts";
import { yearSchema } from "../year/year-schema.ts";

/** Name of a published schema. */
export type SchemaName = (typeof schemaNames)[number];

/** The published schemas, each made when asked for. */
export const schemas: Readonly<Record<SchemaName, () => object>> = {
  job: jobSchema,
  rate: rateSchema,
  design: designSchema,
  fan: fanSchema,
  "import-fan": importFanSchema,
  "fit-surface": fitSurfaceSchema,
  sound: soundSchema,
  dampers: dampersSchema,
  weigh: weighSchema,
  draw: drawSchema,
  check: checkSchema,
  takeoff: takeoffSchema,
  price: priceSchema,
  weather: weatherSchema,
  year: yearSchema,
  air: airSchema,
  coil: coilSchema,
  "coil-alternatives": alternativesSchema,
  read: readSchema,
};
