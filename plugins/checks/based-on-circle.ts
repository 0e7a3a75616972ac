import type {Check} from './check.ts'

/** Find a build that was copied, over others or at once, from itself. */
export const basedOnCircle: Check = {
  rule: 'based-on-circle',
  find: ({slug, surroundings}) => {
    const from = new Map(surroundings?.builds.map((build) => [build.slug, build.basedOn]))
    const line = [slug]
    for (let next = from.get(slug); next !== undefined && line.length <= from.size; next = from.get(next)) {
      line.push(next)
      if (next === slug)
        return [
          {
            at: 'based-on',
            message: `this build is copied from itself: ${line.join(' from ')}; leave based-on out in the one that came first`,
          },
        ]
    }
    return []
  },
}
