/** How measures lie about their plan: the middle one, its direction, and the furthest. */
export interface Spread {
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
