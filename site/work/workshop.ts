import {join} from 'node:path'
import {keptWorks} from './kept-works.ts'
import {programVersion} from './program-version.ts'
import {sharedWorks} from './shared-works.ts'
import {shelf} from './shelf.ts'
import type {Works} from './works.ts'

/** Where builds are read, planned and drawn: what was made before is kept, the rest is done. */
export interface Workshop {
  works: Works
  /** End a round of work: send the help home, and let go of what is kept and no longer used. */
  tidy: () => Promise<void>
}

/** Open the workshop of the journal at `root`; what it keeps lies in `.cache/` there. */
export async function openWorkshop(root: string): Promise<Workshop> {
  const kept = shelf(join(root, '.cache/builds'), await programVersion())
  const works = sharedWorks()
  return {
    works: keptWorks(works, kept),
    tidy: async () => {
      await works.rest()
      await kept.tidy()
    },
  }
}
