import type {Fastener} from '../plan/shape/holes.ts'

/** Of the screws of one row of the build file, which share what is to change, keep the worst. */
export function oneEach(
  screws: readonly Fastener[],
  where: (screw: Fastener) => string,
  worse: (screw: Fastener) => number,
): Fastener[] {
  const worst = new Map<string, Fastener>()
  for (const screw of screws) {
    const known = worst.get(where(screw))
    if (!known || worse(screw) > worse(known)) worst.set(where(screw), screw)
  }
  return [...worst.values()]
}
