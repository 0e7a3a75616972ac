import type {BlockContent} from 'mdast'
import type {PostKey} from '../drawings/hero/names.ts'
import type {Face, Hole} from '../plan/kit/hole.ts'
import type {Plan} from '../plan/plan.ts'
import {drillSource} from '../tables/drills.ts'
import {backingWords, bitName, holeName, oneBit} from '../words/holes.ts'
import {faceNames, faceSeen, sidesExplained} from '../words/sides.ts'
import {fold, link, note, paragraph, source, strong} from './kit.ts'
import {type Cell, table, under} from './kit-table.ts'
import {bitWords, fromNut, lengthAlone, offCentre} from './measures.ts'
import type {Section} from './section.ts'

/** Every hole once: a table a face, in the order of bit changes, with place, depth, bit and backing. */
export const drilling: Section = {
  name: 'drilling',
  title: 'Drilling',
  needs: ({plan, build: {values}}) => {
    if (plan.holes) return []
    return [values.tuners?.at ? 'tuners.post-hole' : 'tuners', 'anchors', 'screws'].slice(
      0,
      values.strings ? 3 : 1,
    )
  },
  content: ({plan, isOnPage = () => true}) => {
    const holes = plan.holes ?? []
    const faces = [...new Set(holes.map(({face}) => face))]
    const isProposed = holes.some((hole) => hole.proposed)
    const bits = new Set(holes.flatMap(({bit}) => (bit ? [oneBit(bit)] : []))).size
    const counted = (count: number, one: string, more = `${one}s`) => `${count} ${count === 1 ? one : more}`
    const what = [counted(holes.length, 'hole'), counted(bits, 'bit'), counted(faces.length, 'face')]
    return [
      paragraph(strong(what.join(', ')), '.'),
      ...fold('Holes face by face, bit by bit', [
        paragraph(
          'Mark every hole from the nut line, centre-punch it, and drill face by face in this order: each bit is put in once a face. Clamp the work, with scrap behind wherever a bit comes out.',
        ),
        ...faces.flatMap((face) =>
          faceTable(
            face,
            holes.filter((hole) => hole.face === face),
            {plan, isDrawn: isOnPage('drawing')},
          ),
        ),
        ...(isProposed
          ? [
              note(
                'A hole marked “proposed” is not placed by the file; it stands where there is room and would work; the proposals stand under what is assumed. Common practice, no source.',
              ),
            ]
          : []),
        source(`${drillSource}; Forstner sizes and depths of ferrules: common practice, no source.`),
      ]),
    ]
  },
}

/** Name the place on the drawing that a tuner's hole is named at; empty for other holes. */
export const postKey = ({what, of}: Hole): PostKey | '' =>
  what.hole === 'tuner' && what.string ? `post${Number(of.split('.').at(-1))}` : ''

interface Shown {
  plan: Plan
  /** Whether the drawing, too, is on the page. */
  isDrawn: boolean
}

function faceTable(face: Face, holes: readonly Hole[], {plan, isDrawn}: Shown): BlockContent[] {
  const onBox = holes.some(({alongMm}) => alongMm !== undefined)
  const isDown = holes.some(({downMm}) => downMm !== undefined)
  const below = face === 'neck end' ? 'Below the playing face' : 'Below the top'
  const backings = [...new Set(holes.map(backingOf))]
  const isShared = backings.length === 1
  const seen = faceSeen[face]
  const sides = seen && holes.some(({offMm}) => offMm !== 0) ? [sidesExplained(plan, seen)] : []
  const remarks = [...(isShared ? [`Backing: ${backings[0]}.`] : []), ...sides]
  const at = (mm: number) => lengthAlone(mm, plan)
  // In a side every hole is as far off as the side itself.
  const isSide = face === 'side bass' || face === 'side treble'
  const keyOf = (hole: Hole) => (isDrawn ? postKey(hole) : '')
  const nameOf = (hole: Hole) => {
    const name = hole.proposed ? `${holeName(hole.what)} (proposed)` : holeName(hole.what)
    return [keyOf(hole) ? link(`#on-${keyOf(hole)}`, name) : name]
  }
  // What is looked at together stands together, so that a phone shows all of it.
  const row = (hole: Hole): Cell[] => [
    [...nameOf(hole), ...(hole.bit ? [under(...bitWords(bitName(hole.bit)))] : [])],
    [
      ...fromNut(hole.stationMm, plan),
      ...(hole.alongMm === undefined ? [] : [under(at(hole.alongMm), ' along')]),
    ],
    [
      ...(isSide ? [] : offCentre(hole.offMm, plan)),
      ...(hole.downMm === undefined ? [] : [under(at(hole.downMm), ' down')]),
    ],
    [
      hole.depthMm === undefined ? 'through' : lengthAlone(hole.depthMm, plan, 'down'),
      ...(isShared ? [] : [under(backingOf(hole))]),
    ],
  ]
  return [
    table({
      caption: `Holes: ${faceNames[face]}`,
      columns: [
        {head: ['Hole', under('Bit')]},
        {head: ['From the nut', ...(onBox ? [under('Along the box')] : [])], align: 'right'},
        {head: ['Off centre', ...(isDown ? [under(below)] : [])]},
        {head: ['Depth', ...(isShared ? [] : [under('Backing')])]},
      ],
      rows: holes.map(row),
      rowId: (at) => (keyOf(holes[at]!) ? `at-${keyOf(holes[at]!)}` : undefined),
      ...(remarks.length > 0 && {note: remarks.join(' ')}),
    }),
  ]
}

function backingOf({backing, depthMm}: Hole): string {
  if (backing) return backingWords[backing]
  return depthMm === undefined ? 'scrap behind' : 'none; mark the depth on the bit'
}
