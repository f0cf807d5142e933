/**
 * Time that nine of ten ball bearings last under a steady radial load.
 *
 * @param rating N, above 0: basic dynamic load rating of one bearing
 * @param load N, above 0: radial load on it
 * @param speed rev/s, above 0: of the shaft
 * @returns s: basic rating life, L10
 * @outside the same formula goes on; loads above half the rating want the maker's word
 * @example bearingLife(43600, 4360, 20) / 3600 // 13889 ± 1
 * @source iso-281 basic rating life of ball bearings
 */
export function bearingLife(rating: number, load: number, speed: number): number {
  return (1e6 * (rating / load) ** 3) / speed;
}

/**
 * Basic dynamic load rating that a ball bearing needs for a life.
 *
 * @param life s, above 0: that nine of ten must reach, L10
 * @param load N, above 0: radial load on it
 * @param speed rev/s, above 0: of the shaft
 * @returns N: basic dynamic load rating
 * @outside the same formula goes on
 * @example bearingRatingFromLife(13889 * 3600, 4360, 20) // 43600 ± 2
 * @source iso-281 basic rating life of ball bearings
 */
export function bearingRatingFromLife(life: number, load: number, speed: number): number {
  return load * ((life * speed) / 1e6) ** (1 / 3);
}

/**
 * Load on the heavier of the two bearings of a shaft with the wheel midway between them and a sheave overhung on one side;
 * weight and belt pull are taken as if they pulled the same way.
 *
 * @param rotorMass kg, 0 or more: wheel and shaft
 * @param beltPull N, 0 or more: on the sheave
 * @param overhang 1, 0…1: from the bearing to the sheave, over the distance between the bearings
 * @returns N: radial load of the bearing beside the sheave
 * @outside the same formula goes on
 * @example bearingLoad(100, 1000, 0.25) // 1740.3 ± 0.1
 * @source definition moments about the far bearing
 */
export function bearingLoad(rotorMass: number, beltPull: number, overhang: number): number {
  return 0.5 * rotorMass * 9.806_65 + beltPull * (1 + overhang);
}
