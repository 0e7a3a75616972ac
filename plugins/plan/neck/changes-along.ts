import type {NeckModel} from './neck-model.ts'

/** A station where the neck's section is worth knowing, and what is there. */
export interface Change {
  stationMm: number
  what: string
}

/**
 * List the stations from the nut line to the tail end (mm) where the section is wanted: nut, middle of the free neck,
 * box edges, and wherever a layer or the round-over begins or ends.
 */
export function changesAlong({
  layup,
  roundOver,
  boxAtMm,
  boxTailMm,
  tailMm,
  scaleMm,
}: Omit<NeckModel, 'changes'>): Change[] {
  const endMm = tailMm ?? boxAtMm ?? scaleMm ?? 0
  const freeMm = boxAtMm ?? scaleMm
  const all: [number | undefined, string][] = [
    [0, 'nut'],
    [freeMm && freeMm / 2, 'middle of the free neck'],
    [boxAtMm, 'box edge'],
    [boxTailMm, 'box tail'],
    ...layup.layers.flatMap(({of, fromMm, toMm}): [number, string][] => [
      [fromMm, `${layerWords(of)} begins`],
      [toMm, `${layerWords(of)} ends`],
    ]),
    [roundOver?.fromMm, 'round-over begins'],
    [roundOver && roundOver.fromMm + roundOver.runInMm, 'round-over at full depth'],
    [roundOver && roundOver.toMm - roundOver.runInMm, 'round-over runs out'],
    [roundOver?.toMm, 'round-over ends'],
    [tailMm, 'tail end'],
  ]
  const inside = all.flatMap(([stationMm, what]) =>
    stationMm !== undefined && stationMm >= 0 && stationMm <= endMm ? [{stationMm, what}] : [],
  )
  return inside
    .filter((one, i) => inside.findIndex((other) => Math.abs(other.stationMm - one.stationMm) < 1e-6) === i)
    .sort((a, b) => a.stationMm - b.stationMm)
}

function layerWords(of: string): string {
  if (of === 'fingerboard') return of
  return of === 'neck.cap' ? 'cap' : of === 'neck' ? 'stick' : `lamination ${of.split('.').at(-1)}`
}
