/**
 * Give the moisture (%) that wood comes to in air of a relative humidity (%) and temperature (°C).
 * 21.1 °C: 40 % gives 7.7, 65 % gives 12.0. Source: Wood Handbook, FPL-GTR-282, Eq. 4-5, Table 4-2.
 */
export function equilibriumMoisture(humidityPercent: number, celsius: number): number {
  const h = Math.min(Math.max(humidityPercent, 0), 100) / 100
  const t = celsius
  const w = 349 + 1.29 * t + 0.0135 * t * t
  const k = 0.805 + 0.000736 * t - 0.00000273 * t * t
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t * t
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t * t
  const bound = (k1 * k * h + 2 * k1 * k2 * (k * h) ** 2) / (1 + k1 * k * h + k1 * k2 * (k * h) ** 2)
  return (1800 / w) * ((k * h) / (1 - k * h) + bound)
}
