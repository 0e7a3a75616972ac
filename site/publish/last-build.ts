import {join} from 'node:path'
import type {NoBuild} from '../journal/list-builds.ts'
import {type Below, isSureState, lookBelow, nameOfState} from '../journal/look-below.ts'
import {settingsBeside} from '../journal/settings.ts'
import {keyOf} from '../kit/cache.ts'
import type {FileProblems} from '../kit/site-data.ts'
import {lookInto} from './look-into.ts'
import type {Standing} from './standing.ts'

/** What the build said that made a site. */
export interface Said {
  unread: readonly NoBuild[]
  problems: readonly FileProblems[]
  builds: number
  pages: number
}

/** What a site is made from. */
export interface MadeFrom {
  /** Another whenever anything of it is. */
  key: string
  /** The same key means the same site. */
  isSure: boolean
}

/** Name all that the site of the journal at `root` would be made from now, without reading it. */
export async function madeFrom(root: string, prefix: string): Promise<MadeFrom> {
  const nowMs = Date.now()
  const builds = await lookBelow(join(root, 'builds'))
  return {key: keyOf(prefix, keyOfJournal(root, builds)), isSure: isSureState(builds, nowMs)}
}

/** Name all that lay in a journal as it was looked at, at `nowMs`; undefined where that cannot be told. */
export const nameOfJournal = (root: string, builds: Below, nowMs: number): string | undefined =>
  isSureState(builds, nowMs) ? keyOfJournal(root, builds) : undefined

/** Another user may read other files. */
const keyOfJournal = (root: string, builds: Below): string =>
  keyOf(String(process.getuid?.()), ...settingsBeside(join(root, 'builds')), nameOfState(builds))

/** Note on a site what it was made from, and what was said. */
export const noteBuild = (standing: Standing, {key}: MadeFrom, said: Said): Standing => ({
  ...standing,
  made: JSON.stringify([key, said]),
})

/** Recall what was said when the site that stands was made; undefined where one made `from` this would be another. */
export function saidBefore(standing: Standing, {key, isSure}: MadeFrom): Said | undefined {
  if (standing.made === undefined || !isSure) return undefined
  const [before, said] = JSON.parse(standing.made) as [string, Said]
  return before === key && standsWhole(standing) ? said : undefined
}

/** Tell whether every file stands as it was written, and nothing beside them. */
function standsWhole(standing: Standing): boolean {
  try {
    const {standing: there, strays} = lookInto(standing)
    return strays.length === 0 && there.length === Object.keys(standing.files).length
  } catch {
    return false
  }
}
