import type {AsBuilt} from '../../plugins/plan/as-built.ts'
import type {SiteBuild} from '../site-data.ts'

/** One measure of one build against its plan. */
interface Deviation {
  one: SiteBuild
  /** Of the front matter: what was measured. */
  path: string
  planned: number
  measured: number
  difference: number
}

/** What was planned and measured alike over several builds: a kind of measure, in one unit. */
export interface Comparison {
  name: string
  unit: string
  deviations: Deviation[]
  /** How many builds they come from. */
  builds: number
}

const kinds: readonly (readonly [RegExp, string])[] = [
  [/^lines\b/, 'Line positions'],
  [/^cents\b/, 'Notes at the lines'],
  [/tension/, 'Pull of the strings'],
  [/relief|bow/, 'Bow of the neck'],
  [/resonance/, 'The box’s own pitch'],
  [/^action\b/, 'String heights'],
  [/^scale\b/, 'Scale length'],
  [/^neck\b|^head\b/, 'Neck and head'],
  [/^box\b/, 'Box'],
]

/** Gather what was measured against what was planned, by kind and unit, over all builds. */
export function comparisons(builds: readonly SiteBuild[]): Comparison[] {
  const found = new Map<string, Comparison>()
  for (const one of builds)
    for (const measure of one.plan.asBuilt ?? []) {
      const name = kinds.find(([pattern]) => pattern.test(measure.path))?.[1]
      const deviation = deviationOf(one, measure)
      if (!name || !deviation) continue
      const key = `${name} ${measure.unit}`
      const comparison = found.get(key) ?? {name, unit: measure.unit, deviations: [], builds: 0}
      comparison.deviations.push(deviation)
      found.set(key, comparison)
    }
  const counted = [...found.values()].map((each) => ({
    ...each,
    builds: new Set(each.deviations.map(({one}) => one.slug)).size,
  }))
  const order = kinds.map(([, name]) => name)
  return counted.sort((a, b) => order.indexOf(a.name) - order.indexOf(b.name))
}

function deviationOf(one: SiteBuild, {path, planned, measured, difference}: AsBuilt): Deviation | undefined {
  if (planned === undefined || difference === undefined) return undefined
  return {one, path, planned, measured, difference}
}

/** How measures lie about their plan: the middle one, its direction, and the furthest. */
interface Spread {
  /** Half lie above this difference, half below. */
  median: number
  /** Half lie nearer to the plan than this. */
  typical: number
  furthest: number
  above: number
  below: number
}

/** Describe differences (measured less planned) by their order alone, which one slip of the rule hardly changes. */
export function spread(differences: readonly number[]): Spread {
  const sizes = differences.map(Math.abs)
  return {
    median: middle(differences),
    typical: middle(sizes),
    furthest: Math.max(...sizes),
    above: differences.filter((difference) => difference > 0).length,
    below: differences.filter((difference) => difference < 0).length,
  }
}

function middle(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const at = (sorted.length - 1) / 2
  return (sorted[Math.floor(at)]! + sorted[Math.ceil(at)]!) / 2
}
