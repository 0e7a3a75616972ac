import type {RackContext} from '../../plugins/plan/stock/rack.ts'
import type {PlannedBuild} from '../journal/read-journal.ts'
import {type Cache, keyOf} from '../kit/cache.ts'
import {isList, isRackContext} from '../steps/kept-shapes.ts'
import type {Listed} from '../steps/results.ts'
import {relationOf} from './kin.ts'

const key = keyOf('list of builds')

/**
 * Keep what the builds of a journal are called, what they were copied from and what stood on the rack for them, in the
 * place of what was kept before.
 */
export async function keepList(cache: Cache, builds: readonly PlannedBuild[]): Promise<void> {
  const before = await keptList(cache)
  const known = new Set(before?.map(({rack}) => rack))
  const list: Listed[] = []
  for (const one of builds) {
    const {rack, file} = one
    const isSeen = Object.values(rack).some((all) => all.length > 0)
    const rackKey = isSeen ? keyOf('rack', one.key) : undefined
    if (rackKey && !known.has(rackKey)) await cache.replace(rackKey, rack)
    list.push({...relationOf(one), file, ...(rackKey && {rack: rackKey})})
  }
  cache.still(list.flatMap(({rack}) => rack ?? []))
  if (JSON.stringify(before) !== JSON.stringify(list)) await cache.replace(key, list)
}

/** Recall it; undefined where the journal was never planned. */
export const keptList = (cache: Cache): Promise<Listed[] | undefined> => cache.kept(key, isList)

/** Recall what stood on the rack for a build; undefined where that is not known. */
export const keptRack = async ({rack}: Listed, cache: Cache): Promise<RackContext | undefined> =>
  rack === undefined ? undefined : cache.kept(rack, isRackContext)
