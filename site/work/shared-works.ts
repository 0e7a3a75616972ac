import {availableParallelism} from 'node:os'
import {type Crew, hireCrew} from './crew.ts'
import type {Works} from './works.ts'

/** So many steps are done sooner here than workers are hired. */
const enoughForACrew = 100

/** Two cores are kept busy by one process already: on them a crew of two took as long, measured. */
const isWorthACrew = availableParallelism() > 2

/** Works that hire help when there is much to do. */
export interface SharedWorks extends Works {
  /** Send the help home; the next steps are counted anew. */
  rest: () => Promise<void>
}

/** Do steps here, and once there are many, on the machine's other cores. */
export function sharedWorks(): SharedWorks {
  let own: Promise<Works> | undefined
  let crew: Crew | undefined
  let steps = 0
  // Only needed once something is to be done: a journal that is all kept loads none of it.
  const works = async (): Promise<Works> => {
    if (++steps > enoughForACrew && isWorthACrew) crew ??= hireCrew()
    own ??= import('./own-works.ts').then(({ownWorks}) => ownWorks())
    return crew?.works ?? own
  }
  return {
    read: async (input) => (await works()).read(input),
    plan: async (input) => (await works()).plan(input),
    make: async (input) => (await works()).make(input),
    give: async (input) => (await works()).give(input),
    rest: async () => {
      await crew?.disband()
      crew = undefined
      steps = 0
    },
  }
}
