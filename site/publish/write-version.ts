import pMap from 'p-map'
import {together} from '../journal/folder.ts'
import type {OwnPages, Whole} from '../make/own-pages.ts'
import type {Known, Unmade} from '../page.ts'
import type {Surround} from '../site-data.ts'
import {note, type Standing, takeOver, unknown} from './standing.ts'
import {writeSite} from './write-site.ts'

/** So many builds are written at a time: enough that Eleventy's start counts for little, and few enough for memory. */
const atATime = 32

/** All of a site: the pages of its builds, known; the pages of the whole journal and its own files, made. */
export interface WholeSite {
  own: readonly OwnPages[]
  shared: Whole
  around: Surround
}

/** What was done: the addresses that were written, and what could not be made. */
export interface Done {
  written: string[]
  unmade: Unmade[]
}

/** Write a site into an empty folder, `to`; what stands in the last version is taken over from there. */
export async function writeVersion(
  {own, shared, around}: WholeSite,
  from: Standing,
  to: Standing,
  told?: (written: number) => void,
): Promise<Done> {
  const toWrite = own.filter(({pages, files}) => takeOver(from, to, [...pages, ...files]).length > 0)
  takeOver(from, to, [...shared.pages, ...shared.files])
  return writeNew({own: toWrite, shared, around}, to, told)
}

/** Write what does not stand yet, and note it; `told` hears how many builds are written. */
export async function writeNew(
  {own, shared, around}: WholeSite,
  standing: Standing,
  told: (written: number) => void = () => {},
): Promise<Done> {
  const isNew = ({address, key}: Known) => standing.files[address]?.[0] !== key
  const toWrite = own.filter(({pages, files}) => pages.some(isNew) || files.some(isNew))
  const done: Done = {written: [], unmade: []}
  for (let at = 0; at === 0 || at < toWrite.length; at += atATime) {
    told(at)
    const some = await pMap(toWrite.slice(at, at + atATime), (one) => one.whole(), together)
    // Those of the whole journal go with the last of them, so that a small journal is written at once.
    const all = at + atATime >= toWrite.length ? [...some, shared] : some
    const pages = all.flatMap((one) => one.pages).filter(isNew)
    const files = all.flatMap((one) => one.files).filter(isNew)
    // Whatever stops this leaves files that are neither the old ones nor the new.
    for (const {address} of [...pages, ...files]) standing.files[address] = unknown
    const failed = await writeSite({pages, files}, around, standing.folder)
    const isFailed = new Set(failed.map(({address}) => address))
    const written = [...pages, ...files].filter(({address}) => !isFailed.has(address))
    for (const one of written) note(standing, one)
    done.unmade.push(...failed)
    done.written.push(...written.map(({address}) => address))
  }
  return done
}
