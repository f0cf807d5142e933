import psychrolib from "psychrolib";

/** A coil known by two resistances, K/W, in counterflow; flows in kg/s, the air's of dry air. */
export interface ResistanceCase {
  readonly airFlow: number;
  readonly dryBulb: number;
  readonly humidityRatio: number;
  readonly liquidFlow: number;
  readonly liquidSpecificHeat: number;
  readonly liquidTemperature: number;
  readonly air: number;
  readonly liquid: number;
  /** Whether moisture may leave the air: where its surface is below the dew point, nowhere, or everywhere both ways. */
  readonly regime: "local" | "dry" | "wet";
}

const steps = 400;

/**
 * Total heat, W, by integrating the local balances along the coil: heat by the air's temperature, moisture by its
 * humidity ratio over the saturated surface (Lewis number one), the surface where both sides agree. No slope of the
 * saturation curve is taken anywhere. The liquid's outlet is found by bisection.
 */
export function integrateCounterflow(data: ResistanceCase): number {
  psychrolib.SetUnitSystem(psychrolib.SI);
  let low = data.liquidTemperature;
  let high = data.dryBulb;
  let heat = 0;
  for (let k = 0; k < 24; k++) {
    const outlet = (low + high) / 2;
    const walk = walkAlong(data, outlet);
    heat = walk.heat;
    if (walk.inlet < data.liquidTemperature) low = outlet;
    else high = outlet;
  }
  return heat;
}

/** From the air's inlet to its outlet, against the liquid. */
function walkAlong(data: ResistanceCase, outlet: number): { inlet: number; heat: number } {
  let t = data.dryBulb;
  let moisture = data.humidityRatio;
  let liquid = outlet;
  let heat = 0;
  for (let step = 0; step < steps; step++) {
    const capacity = 1006 + 1860 * moisture;
    const sensible = (surface: number) => (t - surface) / (data.air * steps);
    const drying = (surface: number) => {
      if (data.regime === "dry") return 0;
      const difference = moisture - psychrolib.GetSatHumRatio(surface, 101_325);
      return (data.regime === "local" ? Math.max(0, difference) : difference) / (data.air * capacity * steps);
    };
    const toLiquid = (surface: number) => (surface - liquid) / (data.liquid * steps);
    let [cold, warm] = [Math.min(liquid, t), Math.max(liquid, t)];
    for (let k = 0; k < 30; k++) {
      const middle = (cold + warm) / 2;
      const fromAir = sensible(middle) + drying(middle) * (2_501_000 + 1860 * t - 4186 * middle);
      if (toLiquid(middle) < fromAir) cold = middle;
      else warm = middle;
    }
    const surface = (cold + warm) / 2;
    const taken = toLiquid(surface);
    moisture -= drying(surface) / data.airFlow;
    t -= sensible(surface) / (data.airFlow * capacity);
    liquid -= taken / (data.liquidFlow * data.liquidSpecificHeat);
    heat += taken;
  }
  return { inlet: liquid, heat };
}
