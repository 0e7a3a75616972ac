import type {BuildValues} from '../../build-file/schema.ts'
import type {Block} from '../shape/box.ts'
import type {Wood} from '../wood-facts.ts'
import {woodOf} from '../wood-of.ts'
import type {Way} from './screw-piece.ts'

/** A layer of the piece that holds a screw, and how thick it is in mm. */
export interface Layer {
  wood: Wood | undefined
  mm: number
}

/**
 * List the woods of the piece that holds a screw, in the order the tip meets them: a neck's from its back, or from above
 * where it is driven down. A wood that nobody knows counts as an unknown one.
 */
export function screwLayers(into: string, way: Way, values: BuildValues, block: Block | undefined): Layer[] {
  const {neck, box} = values
  const everything = Number.MAX_VALUE
  if (into === 'block') return [{wood: found(blockValues(values, block)?.wood?.value), mm: everything}]
  if (into === 'top' && box?.top?.wood) return [{wood: found(box.top.wood.value), mm: everything}]
  if (into !== 'neck' && into !== 'heel') return [{wood: found(box?.wood?.value), mm: everything}]
  const layers = neck?.laminations ?? []
  const thicknessMm = neck?.thickness?.mm ?? 0
  if (!layers.length || way === 'along')
    return [{wood: found(neck?.wood?.value ?? layers.at(-1)?.wood?.value, neck), mm: everything}]
  // The layers are listed from the playing face; what they are over the thickness is planed off the back.
  let leftMm = thicknessMm
  const fromFace = layers.map((layer) => {
    const mm = Math.min(layer.thickness?.mm ?? 0, leftMm)
    leftMm -= mm
    return {wood: found(layer.wood?.value, layer), mm}
  })
  return way === 'down' ? fromFace : fromFace.reverse()
}

function blockValues({box}: BuildValues, block: Block | undefined) {
  const index = Number(block?.of.split('.').at(-1)) - 1
  return box?.blocks?.[index]
}

function found(name: string | undefined, own: Parameters<typeof woodOf>[1] = {}): Wood | undefined {
  return woodOf(name, own) ?? woodOf('unknown')
}
