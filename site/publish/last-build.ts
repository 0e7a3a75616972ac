import {join} from 'node:path'
import type {NoBuild} from '../journal/list-builds.ts'
import {type Below, lookBelow, nameOfState} from '../journal/look-below.ts'
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

/**
 * Name all that the site of the journal at `root` would be made from now, without reading it; undefined where that
 * cannot be told.
 */
export async function madeFrom(root: string, prefix: string): Promise<string | undefined> {
  const nowMs = Date.now()
  const name = nameOfJournal(root, await lookBelow(join(root, 'builds')), nowMs)
  return name && keyOf(prefix, name)
}

/** Name all that lay in a journal as it was looked at, at `nowMs`. Another user may read other files. */
export function nameOfJournal(root: string, builds: Below, nowMs: number): string | undefined {
  const state = nameOfState(builds, nowMs)
  return state && keyOf(String(process.getuid?.()), ...settingsBeside(join(root, 'builds')), state)
}

/** Note on a site what it was made from, and what was said. */
export const noteBuild = (standing: Standing, from: string, said: Said): Standing => ({
  ...standing,
  made: JSON.stringify([from, said]),
})

/** Recall what was said when the site that stands was made; undefined where one made `from` this would be another. */
export function saidBefore(standing: Standing, from: string): Said | undefined {
  if (standing.made === undefined) return undefined
  const [before, said] = JSON.parse(standing.made) as [string, Said]
  return before === from && standsWhole(standing) ? said : undefined
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
