/** A small job for tests of the command line, invented: hood, filters, fan, discharge; nothing cools or heats. */
export const trialJob = `format: oncethrough job 1
duty:
  tag: T-1
  service: Trial laboratory
  site: { altitude: 20 ft, placement: indoor }
  supply airflow:
    design: 12,000 cfm
    minimum: 6,000 cfm
  summer:
    dry bulb day: { dry bulb: 94 °F, wet bulb: 77 °F }
    wet bulb day: { dry bulb: 88 °F, wet bulb: 80 °F }
    dew point day: { dry bulb: 84 °F, dew point: 78 °F }
  winter: { dry bulb: 10 °F, relative humidity: 70 % }
  set points: { supply: 95 °F, winter supply: 32 °F }
  external static: { pressure: 2 in.wg }
  utilities: {}
unit:
  casing: { width: 84 in, height: 72 in }
  sections:
    - kind: intake hood
    - kind: filter bank
      name: filters
      medium: typical MERV 8 pleated 2 in
    - kind: fan
      name: supply fan
      wheel: typical airfoil housed double inlet
      diameter: 24 in
      class: II
      motor power: 20 hp
      drive: belt
    - kind: discharge plenum
      direction: horizontal
      outlet width: 54 in
      outlet height: 30 in
conditions:
  - name: mild evening
    season: cooling
    outdoor: { dry bulb: 65 °F, relative humidity: 55 % }
`;
