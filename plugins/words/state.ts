import type {Problem} from '../build-file/schema/problem.ts'
import type {Plan} from '../plan/plan.ts'
import type {Waiting} from '../plan/work/waiting.ts'
import {billItem} from './bill.ts'
import {inWords} from './quantities.ts'
import {settingUpInWords} from './setting-up.ts'
import {stepName} from './steps.ts'

/** Say in a few words what the checks found: `1 would not work as drawn, 2 to look at again`. */
export function foundInWords(problems: readonly Pick<Problem, 'severity'>[]): string | undefined {
  const count = (...of: string[]) => problems.filter(({severity}) => of.includes(severity)).length
  const found = [
    [count('error'), 'cannot be read'],
    [count('fault'), 'would not work as drawn'],
    [count('warning'), 'to look at again'],
  ] as const
  const said = found.flatMap(([number, words]) => (number > 0 ? [`${number} ${words}`] : []))
  return said.length > 0 ? inWords(said) : undefined
}

/** What comes next: a step of the work, or, once all is done, what to move. Undefined where neither is known. */
export function nextInWords({
  work = [],
  settingUp = [],
  units,
}: Plan): {is: 'step' | 'move'; says: string} | undefined {
  const step = work.find(({isDone}) => !isDone)
  if (step) return {is: 'step', says: lowered(stepName(step))}
  const move = settingUp.find((one) => 'move' in one)
  if (!move) return undefined
  const [does = ''] = settingUpInWords(move, {units}).does.split(/[,;.] |[.]$/)
  return {is: 'move', says: lowered(does)}
}

const lowered = (words: string) => words.charAt(0).toLowerCase() + words.slice(1)

/** Say what is left alone and until when: `Glue up the layers: since 2026-03-07, until 2026-03-08`. */
export function waitingInWords({id, on, until}: Waiting, {work = []}: Plan): string {
  const step = work.find((one) => one.id === id)!
  return `${stepName(step)}: since ${on}, until ${until}`
}

/** What a build still has to get: what neither its file paid for nor the rack gives, as a shop would name it. */
export function stillToGet(plan: Plan): {item: string; count: number; atHand?: string | undefined}[] {
  return (plan.bill ?? [])
    .filter(({from}) => from !== 'cost' && from !== 'stock')
    .map(({item, count, atHand}) => ({item: billItem(item, plan), count, atHand}))
}
