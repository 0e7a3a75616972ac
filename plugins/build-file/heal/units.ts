import {isMap, isScalar, type Node} from 'yaml'
import {beginReading, report, type Slip, textOf} from '../reading/reading-context.ts'
import type {RecordOf} from '../schema/kinds.ts'
import {drop} from './said-twice.ts'
import type {Healing} from './source.ts'

/** Fewer lengths than these are slips of their own. */
const least = 3

const named = {in: 'inches', mm: 'millimetres'}

/** Tell whether a size is out of range that in other units would do. */
const wouldDoIn =
  (units: 'in' | 'mm') =>
  ({problem: {rule, expected = []}}: Slip): boolean =>
    rule === 'out-of-range' && expected.some((text) => text.replace(/ w$/, '').endsWith(` ${units}`))

const isGauge = ({kind}: Slip): boolean => kind?.is === 'leaf' && kind.leaf === 'gauge'

/**
 * Where the lengths that are out of range all fit in the other unit, and no other one ceases to fit there, tell that of
 * the file, once, instead of each.
 */
export function tellUnits({context, source}: Healing, schema: RecordOf): void {
  const units = context.units === 'in' ? 'mm' : 'in'
  const unfit = context.slips.filter(wouldDoIn(units))
  const sizes = unfit.filter((one) => !isGauge(one))
  if (sizes.length < least || !isMap(source.root) || !schema.fields.units) return
  const trial = beginReading({...context, units})
  context.readValue(source.root, schema, '', trial)
  const left = trial.slips.filter(wouldDoIn(context.units))
  if (left.some((one) => !isGauge(one))) return

  const gone = new Set(
    unfit.filter(({path}) => !left.some((one) => one.path === path)).map(({problem}) => problem),
  )
  drop(context.problems, (one) => gone.has(one))
  drop(context.slips, (one) => gone.has(one.problem))
  const [first] = sizes
  const own = source.root.items.find(({key}) => isScalar(key) && textOf(key) === 'units')
  const isSaid = isScalar(own?.value)
  const would = isSaid ? units : `units: ${units}`
  const why = `${sizes.length} lengths cannot be ${named[context.units]}, the first of them ${first!.path.replaceAll('.', ' ')}; as ${named[units]} all do`
  report(
    context,
    {rule: 'units-unlike', place: context.placeOf((isSaid ? own!.value : first!.node) as Node)},
    `${why}; ${would} would do`,
    {expected: [would]},
  )
  if (isSaid) return
  const start = (source.root.items[0]!.key as Node).range![0]
  context.problems.at(-1)!.edits = [[source.edit(start, start, `units: ${units}\n`)]]
}
