/** A build of a family, as it is told: below the one that it was copied from. */
export interface Relative {
  slug: string
  title: string
  /** How many copies lie between it and the first of the family. */
  depth: number
  /** The row of the one it was copied from, from 0. */
  under?: number | undefined
  /** Named as an original, and no build of the journal. */
  isMissing?: true | undefined
}

/** A build and all that it was copied from or is an original of, by copies of copies. */
export interface Family {
  rows: Relative[]
  /** Copied from each other in a circle, which is broken at its first slug. */
  isCircle: boolean
  /** How many more there are than are told. */
  more: number
}

/** What is known of a build's origin. */
export interface Kinship {
  title: string
  basedOn?: string | undefined
}

/** More than these of one family nobody looks through. */
const mostTold = 100

/**
 * Gather the families of builds, each by any build of it: up to the first that it was copied from, and from there all
 * copies, each followed by its own; those of one original by slug. An original that is not there is told as missing.
 */
export function families(builds: ReadonlyMap<string, Kinship>): (slug: string) => Family {
  const copies = new Map<string, string[]>()
  for (const one of [...builds.keys()].sort()) {
    const from = originalOf(one, builds)
    if (from === undefined) continue
    const known = copies.get(from)
    if (known) known.push(one)
    else copies.set(from, [one])
  }
  return (slug) => familyOf(slug, builds, copies)
}

function familyOf(
  slug: string,
  builds: ReadonlyMap<string, Kinship>,
  copies: ReadonlyMap<string, readonly string[]>,
): Family {
  const line = [slug]
  let circle: string[] = []
  for (let from = originalOf(slug, builds); from !== undefined; from = originalOf(from, builds)) {
    if (line.includes(from)) {
      circle = line.slice(line.indexOf(from))
      break
    }
    line.push(from)
  }
  const first = circle.length > 0 ? [...circle].sort()[0]! : line.at(-1)!
  const rows: Relative[] = []
  let more = 0
  // By a list of its own, since a chain of copies may be longer than calls can lie in each other.
  const open: {slug: string; depth: number; under?: number}[] = [{slug: first, depth: 0}]
  for (let next = open.pop(); next; next = open.pop()) {
    const known = builds.get(next.slug)
    const at = rows.length
    if (at < mostTold)
      rows.push({...next, title: known?.title ?? next.slug, ...(!known && {isMissing: true})})
    else more += 1
    const {depth} = next
    const own = (copies.get(next.slug) ?? []).filter((one) => one !== first)
    const below = own.map((one) => ({slug: one, depth: depth + 1, under: at}))
    open.push(...below.reverse())
  }
  return {rows, isCircle: circle.length > 0, more}
}

/** What a build was copied from; a build that names itself has none. */
function originalOf(slug: string, builds: ReadonlyMap<string, Kinship>): string | undefined {
  const from = builds.get(slug)?.basedOn
  return from === slug ? undefined : from
}
