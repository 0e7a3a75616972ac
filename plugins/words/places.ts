import type {Place, Station} from '../plan/layout/layout.ts'
import type {NeckPlace, PlainNeckPlace} from '../plan/neck-shape/model.ts'
import type {StepStation} from '../plan/work/step.ts'
import {bitName, holeName} from './holes.ts'

/** Name a place along the neck: `fret 12, dot`, `box, head side`, `2 screws`. */
export function placeName(place: Place): string {
  const {kind} = place
  switch (kind) {
    case 'line':
      if (place.isFret && place.label === '0') return 'zero fret'
      return `${place.isFret ? 'fret' : 'line'} ${place.label}${place.hasDot ? ', dot' : ''}`
    case 'dot':
      return `dot ${place.label}`
    case 'tuner':
      return place.string ? `tuner ${place.string}` : kind
    case 'box edge':
      return `box, ${place.end} side`
    case 'round-over':
      return place.end === 'head' ? 'round-over starts' : 'round-over stops'
    case 'screw':
      return place.count > 1 ? `${place.count} screws` : kind
    case 'anchor':
      return place.count > 1 ? 'string anchors' : 'string anchor'
    case 'slope':
      return 'head’s slope starts'
    case 'sound hole':
      return 'sound hole, centre'
    case 'nut':
    case 'bridge':
      return `${kind} line`
    default:
      return kind
  }
}

/** Name a place where a step is done. */
export function stationName({what}: Pick<StepStation, 'what'>): string {
  if ('block' in what) return `${blockName(what.block)}, middle`
  return 'hole' in what ? holeName(what) : placeName(what)
}

/** Name a place of a step in a list of its like: a line by its number alone, `12 dot`. */
export function shortStationName({what}: Pick<StepStation, 'what'>): string {
  if ('kind' in what && what.kind === 'line') return `${what.label}${what.hasDot ? ' dot' : ''}`
  if ('kind' in what && what.kind === 'round-over') return what.end === 'head' ? 'starts' : 'stops'
  return stationName({what})
}

/** Name a block by its path in the build file: `end block`, or `block 2`, the second of those listed. */
export const blockName = (of: string): string =>
  of === 'box.end-block' ? 'end block' : `block ${of.split('.').at(-1)}`

const neckPlaces: Readonly<Record<PlainNeckPlace, string>> = {
  nut: 'nut',
  'free middle': 'middle of the free neck',
  'box head': 'box edge',
  'inside starts': 'inside the box begins',
  inside: 'inside the box',
  'inside ends': 'inside the box ends',
  'box tail': 'box tail',
  'round-over starts': 'round-over begins',
  'round-over full': 'round-over at full depth',
  'round-over runs out': 'round-over runs out',
  'round-over ends': 'round-over ends',
  'tail end': 'tail end',
}

/** Say what changes along a neck: `lamination 2 ends`, `inside the box begins`. */
export function neckPlaceName(place: NeckPlace): string {
  if (place.at === 'layer starts') return `${layerName(place.of)} begins`
  if (place.at === 'layer ends') return `${layerName(place.of)} ends`
  return neckPlaces[place.at]
}

function layerName(of: string): string {
  if (of === 'fingerboard') return of
  return of === 'neck.cap' ? 'cap' : of === 'neck' ? 'stick' : `lamination ${of.split('.').at(-1)}`
}

/** A place along the neck as it is given to others. */
export interface PrintedStation extends Omit<Station, 'what'> {
  kind: Place['kind']
  what: string
}

export const printedStation = (station: Station): PrintedStation => ({
  kind: station.what.kind,
  ...station,
  what: placeName(station.what),
})

/** Where a step is done, as it is given to others. */
export interface PrintedStepStation extends Omit<StepStation, 'what' | 'bit'> {
  what: string
  bit?: string | undefined
}

export const printedStepStation = (station: StepStation): PrintedStepStation => ({
  ...station,
  what: stationName(station),
  bit: station.bit && bitName(station.bit),
})
