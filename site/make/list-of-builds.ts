import type {PlannedBuild} from '../journal/read-journal.ts'
import {type Cache, keyOf} from '../kit/cache.ts'
import {isList} from '../steps/kept-shapes.ts'
import type {Listed} from '../steps/results.ts'
import {relationOf} from './kin.ts'

const key = keyOf('list of builds')

/** Keep what the builds of a journal are called and what they were copied from, in the place of what was kept before. */
export async function keepList(cache: Cache, builds: readonly PlannedBuild[]): Promise<void> {
  const list: Listed[] = builds.map((one) => ({...relationOf(one), file: one.file}))
  if (JSON.stringify(await keptList(cache)) !== JSON.stringify(list)) await cache.replace(key, list)
}

/** Recall it; undefined where the journal was never planned. */
export const keptList = (cache: Cache): Promise<Listed[] | undefined> => cache.kept(key, isList)
