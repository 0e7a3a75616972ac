import type {BuildValues} from '../../build-file/schema/schema.ts'
import {type FinishRow, finishWaits, usualFinish} from '../../tables/waits.ts'
import type {StepDraft} from './step.ts'
import {bareFaces, named, type WorkGroup} from './work-facts.ts'

const ready = ['sand', 'burn-marks', 'mark-lines', 'drill-neck-dots']

/** What must be done before a face is sanded for its finish. */
const shaped = [
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
]

/**
 * Sand, stain and finish, in an order that works: stain, oil, shellac, lacquer, varnish or paint, wax; what the file
 * lists otherwise is put right. Hours of waiting count the coats.
 */
export const finishSteps: WorkGroup = (facts) => {
  const {values, isFretted, hasZero} = facts
  if (!values.neck && !values.box) return []
  const dots = isFretted ? ['drill-neck-dots'] : []
  const slots = isFretted || hasZero ? ['slot-frets'] : []
  const keepsPaper = values.box?.top?.paper?.value === 'keep'
  const sand: StepDraft = {
    id: 'sand',
    kind: 'sand',
    facts: {of: 'sand', keepsPaper},
    tool: 'block',
    after: [...shaped, ...dots, ...slots],
  }
  return [sand, ...coatSteps(values.finish ?? [], bareFaces(facts))]
}

/** List the coats, each after the one before it. */
function coatSteps(
  finish: NonNullable<BuildValues['finish']>,
  bare: ReturnType<typeof bareFaces>,
): StepDraft[] {
  const coats = finish.flatMap(({kind, coats: count, on}) =>
    kind ? [{row: rowOf(kind.value), kind: kind.value, count: count?.value ?? 1, on: on?.value}] : [],
  )
  const inOrder = [...coats].sort((a, b) => a.row.order - b.row.order)
  const isMoved = inOrder.some((coat, i) => coat !== coats[i])
  const ids = new Map<string, number>()
  let before: string[] = []
  return inOrder.map(({row, kind, count, on}): StepDraft => {
    const isStain = row.name === 'stain'
    const base = isStain ? 'stain' : `finish-${row.name}`
    const times = (ids.get(base) ?? 0) + 1
    ids.set(base, times)
    const id = times > 1 ? `${base}-${times}` : base
    const after = [...ready, ...(isStain ? [] : ['fret-ends']), ...before]
    before = [id]
    const setting = count > 1 ? {betweenH: row.firstH} : undefined
    return {
      id,
      kind: isStain ? 'stain' : 'finish',
      facts: {of: 'finish', setting, name: kind, coats: count, on, bare, isMoved, isOil: row.name === 'oil'},
      tool: 'rag',
      waitH: (count - 1) * row.firstH + row.lastH,
      after,
      words: ['finish', 'finishing', ...row.words],
    }
  })
}

function rowOf(kind: string): FinishRow {
  const isNamed = named(kind)
  return finishWaits.find(({words}) => isNamed(words)) ?? usualFinish
}
