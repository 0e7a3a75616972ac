import type {WantedPart} from './wanted-part.ts'

/** Give each part an id made of its name: lower-case, hyphens for everything else, a number where two would be alike. */
export function withIds(parts: readonly WantedPart[]): (WantedPart & {id: string})[] {
  const used = new Set<string>()
  const last = new Map<string, number>()
  return parts.map((part) => {
    const plain =
      part.name
        .toLowerCase()
        .replace(/[^\p{L}\p{N}]+/gu, '-')
        .replace(/^-+|-+$/g, '') || 'part'
    let id = plain
    for (let n = last.get(plain) ?? 2; used.has(id); n++) {
      id = `${plain}-${n}`
      last.set(plain, n + 1)
    }
    used.add(id)
    return {...part, id}
  })
}
