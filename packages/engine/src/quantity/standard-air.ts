/**
 * Density of standard air, kg/m³: 0.075 lb/ft³, dry air near 70 °F at sea level. Volumes of standard air are masses in
 * disguise: a standard cubic foot is 0.075 lb of dry air wherever it flows.
 */
export const standardAirDensity = (0.075 * 0.453_592_37) / 0.3048 ** 3;
