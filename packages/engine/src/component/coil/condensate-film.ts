/** Pa s and kg/m³ of condensate near 10 °C. */
const viscosity = 0.00131;
const density = 999.7;
const gravity = 9.80665;

/**
 * Thickness at the foot of a fin of the film of condensate that runs down both its faces, by Nusselt's laminar film. Real
 * fins shed drops and bridge before they run even: it ranks coils, it does not say when one throws water.
 *
 * @param loading kg/s m, 0…0.1: condensate per metre of wetted edge, both faces of a fin counted
 * @returns m: thickness
 * @outside keeps answering; laminar whatever the loading
 * @example condensateFilmThickness(0.001) // 7.38e-5 ± 1e-7
 * @source derived-here (3 μ Γ/(ρ² g))^(1/3), Nusselt's falling film
 */
export function condensateFilmThickness(loading: number): number {
  return Math.cbrt((3 * viscosity * Math.max(0, loading)) / (density * density * gravity));
}
