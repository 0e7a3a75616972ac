import type {Plan} from '../../plan/plan.ts'
import {bareLength, type Ruler} from '../lengths.ts'
import {number} from '../quantities.ts'
import {behind, type Handed, sideWord} from '../sides.ts'

// What is written on drawings. Lengths stand without their unit, which is said once beside the drawing (ISO 129-1).

/** Write a place from the nut line: `25`, and of the head `5 1/2 behind`. */
export const placeOf = (mm: number, ruler: Ruler): string =>
  `${bareLength(Math.abs(mm), ruler)}${mm < 0 ? ` ${behind}` : ''}`

/** Write a diameter: `Ø 1 1/8`. */
export const diameterOf = (mm: number, ruler: Ruler): string => `Ø ${bareLength(mm, ruler)}`

/** Put what is proposed, and not the file's, in brackets. */
export const inBrackets = (words: string, proposed: true | undefined): string =>
  proposed ? `(${words})` : words

/** Write a radius: `R 1/4`. */
export const radiusOf = (mm: number, ruler: Ruler): string => `R ${bareLength(mm, ruler)}`

/** Write an angle to a tenth of a degree: `13.5°`. */
export const angleOf = (deg: number): string => `${number(deg, 1)}°`

/** Write what several angles lie between: `6.9 to 10.9°`. */
export function anglesBetween(degs: readonly number[]): string {
  const [low, high] = [number(Math.min(...degs), 1), number(Math.max(...degs), 1)]
  return low === high ? `${low}°` : `${low} to ${high}°`
}

/** Cut a name short, with an ellipsis, where a drawing has no room for all of it. */
const shortName = (name: string, most = 22): string =>
  name.length > most ? `${name.slice(0, most - 1).trimEnd()}…` : name

/** Say once what a drawing's figures are in. */
export const unitWords = ({units}: Pick<Plan, 'units'>): string =>
  units === 'in' ? 'figures in inches' : 'figures in millimetres'

/** What each view is called in its title, and what stands below it. */
export const viewWords = {
  top: {
    title: 'from the front',
    caption: 'From the front, hanging from the nut line; the head along its own face',
  },
  side: {title: 'from the side', caption: 'From the side'},
  head: {title: 'the head', caption: 'The head along its own face, measured from the nut line'},
  whole: {
    title: 'front and side',
    caption: 'Front and side from one nut line, to scale',
  },
  section: {
    title: 'section of the neck',
    caption: 'Across the middle of the neck, seen from the bridge',
  },
  'section-inside': {
    title: 'section of the neck inside the box',
    caption: 'Across the neck inside the box, where it is cut down under the top, seen from the bridge',
  },
  inside: {
    title: 'the top from inside',
    caption: 'The box’s top from inside, measured from its head side',
  },
} as const

/** Title a drawing by its instrument, where that has a name, and what is seen of it. */
export const titleOf = ({title}: Pick<Plan, 'title'>, what: string): string =>
  title ? `${title}: ${what}` : what

/** Places along an instrument, head end to tail end. */
export const placeNames = {
  headEnd: 'head end',
  scarfFace: 'scarf’s glue line',
  slope: 'slope starts',
  nut: 'nut line',
  zeroFret: 'nut line: zero fret’s slot',
  roundOverStarts: 'round-over starts',
  roundOverStops: 'round-over stops',
  boardEnds: 'fingerboard ends',
  boxHead: 'box, head side',
  bridge: 'bridge line',
  anchors: 'string anchors',
  boxTail: 'box, tail side',
  tailEnd: 'tail end',
} as const

/** The same where there is room for little. */
export const shortNames = {
  headEnd: 'head end',
  nut: 'nut line',
  boxHead: 'box',
  bridge: 'bridge',
  anchors: 'anchors',
  boxTail: 'box end',
  tailEnd: 'tail end',
} as const

/** Say how wide and how deep a box is: `7 wide`, `2 deep`. */
export const widthAndDepth = (widthMm: number, depthMm: number, ruler: Ruler): [string, string] => [
  `${bareLength(widthMm, ruler)} wide`,
  `${bareLength(depthMm, ruler)} deep`,
]

/** Name a line across the neck: `fret 12`, `line 12`. */
export const lineName = (label: string, fretted: boolean | undefined): string =>
  `${fretted ? 'fret' : 'line'} ${label}`

/** What the side view's notes are about. */
export const sideNames = {
  atNut: 'string at nut',
  atOctave: 'at the octave',
  behindNut: 'behind the nut',
  bridgeOnTop: 'bridge, on top',
  bridge: 'bridge height',
  breakAngle: 'break angle',
  head: 'head thick',
  lean: 'leans back',
  step: 'cut down',
  neck: 'neck thick',
  fingerboard: 'fingerboard',
  roundedFrom: 'rounded from',
  roundedTo: 'rounded to',
  scarfFace: 'scarf face',
  faceAboveTop: 'face above top',
} as const

/** What the cross-section's notes are about, besides its layers. */
export const crossSectionNames = {
  neutralAxis: 'neutral axis',
  roundOver: 'round-over',
  top: 'top',
  daylight: 'daylight',
  face: 'playing face',
} as const

/** Name a layer of the neck by its wood: `hard maple, 3 strips`. */
export function layerName(wood: string, strips: number): string {
  return strips > 1 ? `${shortName(wood)}, ${strips} strips` : shortName(wood)
}

/** Name a tuner's post, and say how far it stands off the centre line and where: `D3, 7/16 bass`. */
export function postName(name: string | undefined, offMm: number, plan: Ruler & Handed): string {
  const off = `${bareLength(Math.abs(offMm), plan)} ${sideWord(offMm, plan)}`
  return `${name ?? 'post'}, ${offMm === 0 ? 'centred' : off}`
}

/** Name a row of equal sound holes: `2 holes Ø 1`. */
export const holesName = (count: number, diameterMm: number, ruler: Ruler): string =>
  `${count === 1 ? 'hole' : `${count} holes`} ${diameterOf(diameterMm, ruler)}`

/** Name a block by its width and length: `block 4 1/2 × 1 1/4`. */
export const blockName = (widthMm: number, lengthMm: number, ruler: Ruler): string =>
  `block ${bareLength(widthMm, ruler)} × ${bareLength(lengthMm, ruler)}`

/** Count what stands in one row: `2 × Ø 1/8`. */
export const rowName = (count: number, name: string): string => (count > 1 ? `${count} × ${name}` : name)

export const insideWords = 'seen from inside'

/** What is written on a piece that is cut up. */
export const cutWords = {
  kept: ['back on the rack', 'keep'],
  title: (pieceId: string) => `${pieceId}: where to cut`,
} as const
