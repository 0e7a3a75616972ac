import {feltOf} from '../plan/effects.ts'
import type {Plan} from '../plan/plan.ts'
import {feltOtherwise, insteadOf} from './effects.ts'
import {lengthWords} from './lengths.ts'
import {forceWords, inWords, number} from './quantities.ts'

/** Say in a maker's words what is otherwise about an instrument once its build was changed: a few words each. */
export function differencesInWords(before: Plan, after: Plan): string[] {
  const others = feltOtherwise(feltOf(before), feltOf(after), after)
  return [
    ...pull(before, after),
    ...feel(before, after),
    ...overBox(before, after),
    ...stick(before, after),
    ...others.filter(({name}) => !name.startsWith('pull')).map(insteadOf),
  ]
}

/** A change of less than half a per cent is none. */
function pull(before: Plan, after: Plan): string[] {
  const [was, is] = [before.tensionTotalN, after.tensionTotalN]
  if (was === undefined || is === undefined || was <= 0 || is <= 0) return []
  const part = is / was - 1
  if (Math.abs(part) < 0.005) return []
  const way = part > 0 ? 'up' : 'down'
  return [`pull ${way} ${number(Math.abs(part) * 100, 0)} %, to ${forceWords(is, after)}`]
}

function feel({strings: a = []}: Plan, {strings: b = []}: Plan): string[] {
  return b.flatMap(({name, pull}, i) => {
    const was = a[i]?.pull
    return pull && was && pull !== was ? [`${name} now ${pull}, was ${was}`] : []
  })
}

const over = ({scale}: Plan): string[] =>
  (scale?.lines ?? []).flatMap(({label, overBox}) => (overBox ? [label] : []))

function overBox(before: Plan, after: Plan): string[] {
  if (!before.scale?.lines || !after.scale?.lines || !before.box || !after.box) return []
  const [was, is] = [over(before), over(after)]
  const now = is.filter((label) => !was.includes(label))
  const there = new Set(after.scale.lines.map(({label}) => label))
  const free = was.filter((label) => !is.includes(label) && there.has(label))
  const lines = (labels: string[]) => `${labels.length === 1 ? 'line' : 'lines'} ${inWords(labels)}`
  return [
    ...(now.length > 0 ? [`${lines(now)} now over the box`] : []),
    ...(free.length > 0 ? [`${lines(free)} no longer over the box`] : []),
  ]
}

function stick(before: Plan, after: Plan): string[] {
  const [was, is] = [before.neck?.budget?.neededMm, after.neck?.budget?.neededMm]
  if (was === undefined || is === undefined || Math.abs(is - was) < after.rulerMm) return []
  const by = lengthWords(Math.abs(is - was), after)
  return [`the stick must be ${by} ${is > was ? 'longer' : 'shorter'}, ${lengthWords(is, after)} altogether`]
}
