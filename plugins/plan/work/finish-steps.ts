import {type FinishRow, finishWaits, usualFinish} from '../../tables/waits.ts'
import type {StepDraft} from './step.ts'
import {bareFaces, named, type WorkGroup} from './work-facts.ts'

const ready = ['sand', 'burn-marks', 'mark-lines', 'drill-neck-dots']

/**
 * Sand, stain and finish, in an order that works: stain, oil, shellac, lacquer, varnish or paint, wax; what the file
 * lists otherwise is put right. Hours of waiting count the coats.
 */
export const finishSteps: WorkGroup = (facts) => {
  const {values, isFretted, hasZero} = facts
  const bare = bareFaces(facts)
  if (!values.neck && !values.box) return []
  const coats = (values.finish ?? []).flatMap(({kind, coats: count, on}) =>
    kind ? [{row: rowOf(kind.value), kind: kind.value, count: count?.value ?? 1, on: on?.value}] : [],
  )
  const inOrder = [...coats].sort((a, b) => a.row.order - b.row.order)
  const isMoved = inOrder.some((coat, i) => coat !== coats[i])
  const keepsPaper = values.box?.top?.paper?.value === 'keep'
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
      facts: {
        of: 'finish',
        setting: count > 1 ? {betweenH: row.firstH} : undefined,
        name: kind,
        coats: count,
        on,
        bare,
        isMoved,
        isOil: row.name === 'oil',
      },
      tool: 'rag',
      waitH: (count - 1) * row.firstH + row.lastH,
      after: [...ready, ...(row.name === 'stain' ? [] : ['fret-ends']), ...before],
      words: ['finish', 'finishing', ...row.words],
    }
    before = [id]
    return step
  })
  return [
    {
      id: 'sand',
      kind: 'sand',
      facts: {of: 'sand', keepsPaper},
      tool: 'block',
      after: [
        'plane-sides',
        'sand-board',
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
        'cut-down',
        'groove-nut',
        'fit-parts',
        ...(isFretted ? ['drill-neck-dots'] : []),
        ...(isFretted || hasZero ? ['slot-frets'] : []),
      ],
    },
    ...finishes,
  ]
}

function rowOf(kind: string): FinishRow {
  const isNamed = named(kind)
  return finishWaits.find(({words}) => isNamed(words)) ?? usualFinish
}
