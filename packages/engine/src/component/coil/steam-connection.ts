import { connectionSizes } from "./liquid-pressure.ts";

type Size = (typeof connectionSizes)[number];

/**
 * What pipes of a coil on steam are sized for: air at 2.5 m/s on the fins that is warmed by 45 K, steam of 5 psig at no more
 * than 30 m/s, condensate that fills half a pipe at 0.3 m/s. Common practice, no source.
 */
const sizing = { face: 2.5, rise: 45, steamVelocity: 30, condensateVelocity: 0.3 } as const;
/** kg/m³ and J/kg K of air; J/kg and kg/m³ of steam at 5 psig, kg/m³ of its condensate. */
const air = { density: 1.2, heat: 1006 } as const;
const steam = { latent: 2.234e6, density: 0.79, condensate: 952 } as const;

/**
 * Pipes of one coil on steam: into its steam header, and out of its condensate header.
 *
 * @param faceArea m², 0.02…12: of one coil
 * @returns record: nominal sizes and bores of steam and condensate
 * @outside the largest of the list, 8 in.
 * @example steamConnections(1).steam.nominal // "2-1/2 in"
 * @example steamConnections(1).condensate.nominal // "1 in"
 * @source common-practice steam at 6000 ft/min, condensate in a half-full pipe
 */
export function steamConnections(faceArea: number): { readonly steam: Size; readonly condensate: Size } {
  const flow = (faceArea * sizing.face * air.density * air.heat * sizing.rise) / steam.latent;
  return {
    steam: smallest(flow / (steam.density * sizing.steamVelocity)),
    condensate: smallest((2 * flow) / (steam.condensate * sizing.condensateVelocity)),
  };
}

function smallest(area: number): Size {
  const bore = Math.sqrt((4 * area) / Math.PI);
  return connectionSizes.find(({ diameter }) => diameter >= bore) ?? connectionSizes[connectionSizes.length - 1]!;
}
