import type {BuildValues} from '../../build-file/schema.ts'
import type {Piece} from '../part.ts'

type Stick = Pick<Piece, 'lengthMm' | 'widthMm' | 'thicknessMm' | 'clearMm'>

/**
 * Give the longest stick (mm) that can be cut from the wood at hand: within a piece's clear length, less `saw.trim` at
 * each end. Wood at hand is what the build lists or takes, else the rack. Pieces as wide as the neck and as thick as
 * it, or as its thickest layer, come first; undefined where there is none.
 */
export function longestStick(values: BuildValues, rack: readonly Piece[]): number | undefined {
  const taken = values.take?.map(({value}) => value)
  const listed = stockOf(values)
  const fromRack = taken ? rack.filter(({id}) => taken.includes(id)) : listed.length > 0 ? [] : rack
  const sticks: readonly Stick[] = [...listed, ...fromRack]
  const layers = values.neck?.laminations?.map((layer) => layer.thickness?.mm ?? 0)
  const thickMm = layers?.length ? Math.max(...layers) : (values.neck?.thickness?.mm ?? 0)
  const wideMm = values.neck?.width?.nut?.mm ?? 0
  const fitting = sticks.filter(
    ({widthMm, thicknessMm}) => widthMm >= wideMm - 1e-6 && thicknessMm >= thickMm - 1e-6,
  )
  const trimMm = values.saw?.trim?.mm ?? 0
  const lengths = (fitting.length > 0 ? fitting : sticks).map(
    ({lengthMm, clearMm: [from, to] = [0, lengthMm]}) => to - from - 2 * trimMm,
  )
  return lengths.length > 0 ? Math.max(...lengths) : undefined
}

function stockOf({stock = []}: BuildValues): Stick[] {
  return stock.flatMap(({length, width, thickness, clear}) => {
    if (!length) return []
    const [from, to] = clear ?? []
    return [
      {
        lengthMm: length.mm,
        widthMm: width?.mm ?? Number.POSITIVE_INFINITY,
        thicknessMm: thickness?.mm ?? Number.POSITIVE_INFINITY,
        ...(from && to && {clearMm: [from.mm, to.mm] as const}),
      },
    ]
  })
}
