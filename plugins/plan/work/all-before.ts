/** Gather for each step all that must come before it, near and far; the steps are in an order that works. */
export function allBefore(
  steps: readonly {id: string; after: readonly string[]}[],
): ReadonlyMap<string, ReadonlySet<string>> {
  const before = new Map<string, Set<string>>()
  for (const {id, after} of steps) {
    const all = new Set(after)
    for (const one of after) for (const further of before.get(one) ?? []) all.add(further)
    before.set(id, all)
  }
  return before
}
