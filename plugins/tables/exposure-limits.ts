/** How long a day may last at each level of noise. Source: 29 CFR 1910.95, Table G-16; a 90 dBA day, 5 dB halving it. */
export const noiseLimits = [
  {dBA: 90, hours: 8},
  {dBA: 92, hours: 6},
  {dBA: 95, hours: 4},
  {dBA: 97, hours: 3},
  {dBA: 100, hours: 2},
  {dBA: 102, hours: 1.5},
  {dBA: 105, hours: 1},
  {dBA: 110, hours: 0.5},
  {dBA: 115, hours: 0.25},
] as const

/** From this level over a working day an employer must look after hearing. Source: 29 CFR 1910.95(c)(1). */
export const hearingCareDba = 85

/** The most wood dust in the air over a working day, mg/m³: what the law allows, then what is advised. */
// biome-ignore format: a line each
export const dustLimits = [
  {what: 'wood dust, all of it', mgM3: 15, by: 'the law for employers', source: 'OSHA permissible limit for dust not otherwise regulated, 29 CFR 1910.1000'},
  {what: 'wood dust, the fine part', mgM3: 5, by: 'the law for employers', source: 'OSHA permissible limit for dust not otherwise regulated, 29 CFR 1910.1000'},
  {what: 'wood dust', mgM3: 1, by: 'advised', source: 'NIOSH Pocket Guide, wood dust (npgd0667); ACGIH by way of OSHA, Wood Dust'},
  {what: 'western redcedar', mgM3: 0.5, by: 'advised', source: 'ACGIH by way of OSHA, Wood Dust'},
] as const
