import type {Plan} from './plan.ts'

/** What is measured alike, by the paths of the front matter under which it stands. */
const kinds = {
  lines: /^lines\b/,
  notes: /^cents\b/,
  pull: /tension/,
  bow: /relief|bow/,
  resonance: /resonance/,
  action: /^action\b/,
  scale: /^scale\b/,
  neck: /^neck\b|^head\b/,
  box: /^box\b/,
} as const

export type MeasureKind = keyof typeof kinds

/** One measure of one build against its plan, in its comparison's unit. */
interface Deviation<B> {
  one: B
  /** Of the front matter: what was measured. */
  path: string
  planned: number
  measured: number
  difference: number
}

/** What was planned and measured alike over several builds, in one unit. */
export interface Comparison<B> {
  kind: MeasureKind
  unit: string
  deviations: Deviation<B>[]
  /** How many builds they come from. */
  builds: number
}

/** Gather what was measured against what was planned, by kind and unit, over all builds; kinds in working order. */
export function comparisons<B extends {plan: Plan}>(builds: readonly B[]): Comparison<B>[] {
  const found = new Map<string, Comparison<B>>()
  for (const one of builds)
    for (const {path, unit, planned, measured, difference} of one.plan.asBuilt ?? []) {
      const kind = order.find((each) => kinds[each].test(path))
      if (!kind || planned === undefined || difference === undefined) continue
      const key = `${kind} ${unit}`
      const comparison = found.get(key) ?? {kind, unit, deviations: [], builds: 0}
      comparison.deviations.push({one, path, planned, measured, difference})
      found.set(key, comparison)
    }
  const counted = [...found.values()].map((each) => ({
    ...each,
    builds: new Set(each.deviations.map(({one}) => one)).size,
  }))
  return counted.sort((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind))
}

const order = Object.keys(kinds) as MeasureKind[]

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
