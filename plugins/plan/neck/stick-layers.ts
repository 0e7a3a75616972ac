import type {BuildValues} from '../../build-file/schema.ts'
import {type LayerWood, layerWood} from './layer-wood.ts'

/** A layer of the neck before it is stacked: mm from the nut line, and its own thickness. */
export interface BareLayer extends LayerWood {
  /** Its path in the build file. */
  of: string
  thicknessMm: number
  fromMm: number
  toMm: number
  /** There when the scarf is sawn, so part of the head as well. */
  isSawn: boolean
  strips?: number
}

type Neck = NonNullable<BuildValues['neck']>

/**
 * List the stick's layers from the face down: its laminations, where each has a thickness, or the solid stick of the
 * thickness given (mm). A lamination that starts at the ledge or after it cannot be in the head, so unless the file
 * says otherwise it is glued on after the scarf.
 */
export function stickLayers(neck: Neck, {ledgeMm, solidMm}: {ledgeMm: number; solidMm: number}): BareLayer[] {
  const {laminations, wood, density, stiffness} = neck
  if (!laminations?.length || laminations.some(({thickness}) => !thickness))
    return [
      {
        of: 'neck',
        ...layerWood({...(wood && {wood}), ...(density && {density}), ...(stiffness && {stiffness})}),
        thicknessMm: solidMm,
        fromMm: Number.NEGATIVE_INFINITY,
        toMm: Number.POSITIVE_INFINITY,
        isSawn: true,
      },
    ]
  return laminations.map((layer, i) => {
    const startsLate = layer.from !== undefined && layer.from.mm >= -ledgeMm - 1e-6
    const isSawn = layer.glued ? layer.glued.value === 'before scarf' : !startsLate
    return {
      of: `neck.laminations.${i + 1}`,
      ...layerWood(layer),
      thicknessMm: layer.thickness!.mm,
      fromMm: layer.from?.mm ?? (isSawn ? Number.NEGATIVE_INFINITY : -ledgeMm),
      toMm: layer.to?.mm ?? Number.POSITIVE_INFINITY,
      isSawn,
      ...(layer.strips && {strips: layer.strips.value}),
    }
  })
}
