import type {BuildValues} from '../../build-file/schema.ts'

/** A build as the rack sees it. */
export interface RackBuild {
  slug: string
  values: Pick<BuildValues, 'started' | 'status' | 'take' | 'stock' | 'scale'>
}

/** Put builds in the order in which they take their wood: by the day they were started, then by slug; undated ones last. */
export function inRackOrder<B>(builds: readonly B[], of: (one: B) => RackBuild): B[] {
  const day = (one: B) => of(one).values.started?.iso ?? '\uffff'
  const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0)
  return [...builds].sort((a, b) => compare(day(a), day(b)) || compare(of(a).slug, of(b).slug))
}
