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

/** A habit of a workshop: one measure that comes out to the same side of its plan on build after build. */
export interface Habit {
  /** Of the front matter: what was measured. */
  path: string
  unit: string
  /** How much more is measured than was planned, the middle build; negative: less. */
  off: number
  /** How many builds it rests on, and how many of them are off to that side. */
  builds: number
  same: number
}

/** Fewer builds than this say nothing about a workshop; common practice, no source. */
export const fewestBuilds = 5
/** What chance may do as often as this is no habit; common practice in tests of significance. */
const byChance = 0.05

/**
 * Find what a workshop does to its plans: measures that at least five builds have, off to the same side so often that
 * chance alone would do it in less than one of twenty workshops. Source: the sign test (from memory).
 */
export function habits<B extends {plan: Plan}>(compared: readonly Comparison<B>[]): Habit[] {
  const found = new Map<string, {unit: string; differences: number[]}>()
  for (const {unit, deviations} of compared)
    for (const {path, difference} of deviations) {
      const one = found.get(path) ?? {unit, differences: []}
      found.set(path, {unit, differences: [...one.differences, difference]})
    }
  return [...found].flatMap(([path, {unit, differences}]) => {
    const {median, above, below} = spread(differences)
    const same = Math.max(above, below)
    if (differences.length < fewestBuilds || chanceOf(same, differences.length) > byChance) return []
    return [{path, unit, off: median, builds: differences.length, same}]
  })
}

/** The chance that of `count` fair coins at least `same` fall to one given side. */
function chanceOf(same: number, count: number): number {
  let ways = 1
  let sum = 0
  for (let k = 0; k <= count; k += 1) {
    if (k >= same) sum += ways
    ways = (ways * (count - k)) / (k + 1)
  }
  return sum / 2 ** count
}

function middle(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const at = (sorted.length - 1) / 2
  return (sorted[Math.floor(at)]! + sorted[Math.ceil(at)]!) / 2
}
