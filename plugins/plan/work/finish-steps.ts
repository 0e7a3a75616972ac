import {type FinishRow, finishWaits, usualFinish} from '../../tables/waits.ts'
import {named, type StepDraft, type WorkGroup} from './step.ts'

const ready = ['sand', 'burn-marks', 'mark-lines', 'drill-neck-dots']

/**
 * Sand, stain and finish, in an order that works: stain, oil, shellac, lacquer, varnish or paint, wax; what the file
 * lists otherwise is put right. Hours of waiting count the coats.
 */
export const finishSteps: WorkGroup = ({values, isFretted}) => {
  if (!values.neck && !values.box) return []
  const coats = (values.finish ?? []).flatMap(({kind, coats: count, on}) =>
    kind ? [{row: rowOf(kind.value), kind: kind.value, count: count?.value ?? 1, on: on?.value}] : [],
  )
  const inOrder = [...coats].sort((a, b) => a.row.order - b.row.order)
  const isMoved = inOrder.some((coat, i) => coat !== coats[i])
  const paper = values.box?.top?.paper?.value === 'keep' ? ', not on the paper' : ''
  const ids = new Map<string, number>()
  let before: string[] = []
  const finishes = inOrder.map((coat): StepDraft => {
    const {row, kind, count, on} = coat
    const base = row.name === 'stain' ? 'stain' : `finish-${row.name}`
    const times = (ids.get(base) ?? 0) + 1
    ids.set(base, times)
    const id = times > 1 ? `${base}-${times}` : base
    const step: StepDraft = {
      id,
      kind: row.name === 'stain' ? 'stain' : 'finish',
      step: kind.charAt(0).toUpperCase() + kind.slice(1),
      does: `${count === 1 ? 'One thin coat' : `${count} thin coats`}${on ? ` on the ${on}` : ''}.${isMoved ? ' Put in an order that holds; the file has another.' : ''}`,
      tool: 'rag or brush',
      setting: count > 1 ? `${row.firstH} h between coats` : undefined,
      waitH: (count - 1) * row.firstH + row.lastH,
      after: [...ready, ...(row.name === 'stain' ? [] : ['fret-ends']), ...before],
      check: row.name === 'oil' ? 'Wiped dry; no smell left before more goes over it.' : undefined,
      words: ['finish', 'finishing', ...row.words],
    }
    before = [...before, id]
    return step
  })
  return [
    {
      id: 'sand',
      kind: 'sand',
      does: `With the grain, dust off between grits${paper}.`,
      tool: 'block and paper',
      setting: '120, 180, then 220',
      after: [
        'plane-sides',
        'round-over',
        'shape-head',
        'drill-head',
        'drill-neck',
        'glue-up-board',
        'box-strip',
        'box-prepare',
        'fit-blocks',
        'drill-top',
        'drill-box',
        'notch-box',
        ...(isFretted ? ['drill-neck-dots', 'slot-frets'] : []),
      ],
      check: 'No scratch in low light.',
    },
    ...finishes,
  ]
}

function rowOf(kind: string): FinishRow {
  const isNamed = named(kind)
  return finishWaits.find(({words}) => isNamed(words)) ?? usualFinish
}
