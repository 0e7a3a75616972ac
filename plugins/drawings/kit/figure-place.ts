/** Find the middle for a figure: within the span if it fits there, else beyond its end; never over a station. */
export function figurePlace(
  {from, to}: {from: number; to: number},
  half: number,
  stations: readonly number[],
  textMm: number,
): number {
  const free = (m: number) => !stations.some((s) => s > m - half + 1e-6 && s < m + half - 1e-6)
  const centre = (from + to) / 2
  const near = stations.flatMap((s) => [s - half, s + half])
  const clear = 1.4 * textMm
  const beyond = [to + clear + half, from - clear - half, ...near]
  const nearest = (places: number[]) =>
    places.filter(free).sort((a, b) => Math.abs(a - centre) - Math.abs(b - centre) || b - a)[0]
  return (
    nearest([centre, ...near].filter((m) => m - half >= from - 1e-6 && m + half <= to + 1e-6)) ??
    nearest(beyond.filter((m) => m - half >= to + clear - 1e-6 || m + half <= from - clear + 1e-6)) ??
    centre
  )
}
