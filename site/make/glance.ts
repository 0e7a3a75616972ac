import {plainLines} from '../../plugins/build-file/reading/front-matter.ts'
import {makersWords} from '../../plugins/words/makers-words.ts'
import type {PlannedBuild} from '../journal/read-journal.ts'
import {type Cache, keyOf} from '../kit/cache.ts'
import {drawnCover} from '../kit/own-names.ts'
import type {KnownPage, Page} from '../kit/page.ts'
import {wordsOf} from '../kit/search-words.ts'
import type {SiteBuild} from '../kit/site-data.ts'
import {isGlance} from '../steps/kept-shapes.ts'
import type {Glance, Summary} from '../steps/results.ts'
import {planKey} from '../steps/steps.ts'

/** Keep what other pages show of a build, unless this program failed at some of it. */
export async function keepGlance(
  one: PlannedBuild,
  built: SiteBuild,
  {pages, cache}: {pages: readonly Page[]; cache: Cache},
): Promise<void> {
  const {headings, hanging, faults} = built.made
  if (faults.length > 0) return
  const seen = {made: {headings: [...headings], hanging}, cover: openingOf(built), pages: pages.map(known)}
  await cache.large(keyOfGlance(one), async () => ({...seen, called: makersWords(built)}), isGlance)
}

/** Take what other pages show of a build, kept when its pages were made for whichever readers. */
export async function keptGlance(
  one: PlannedBuild,
  cache: Cache,
): Promise<Pick<Summary, 'made' | 'cover' | 'faults' | 'pages'> | undefined> {
  const glance: Glance | undefined = await cache.kept(keyOfGlance(one), isGlance)
  if (!glance) return undefined
  const {made, called, cover, pages} = glance
  return {made: {...made, words: wordsOf(`${plainLines(one.text)}\n${called}`)}, cover, pages, faults: []}
}

/** Stands for the build as planned, and not for what of it is published. */
const keyOfGlance = ({input, file, looked}: PlannedBuild): string =>
  keyOf('glance', planKey(input), file, JSON.stringify([...looked.pictures]))

/** A page in short. */
export const known = ({address, key, layout, data: {unlisted}}: Page): KnownPage => ({
  address,
  key,
  layout,
  data: unlisted ? {unlisted} : {},
})

/** The opening of a build's drawn cover. */
export const openingOf = ({made: {drawings}}: SiteBuild): string | undefined =>
  /^[^>]*<svg[^>]*>/.exec(drawings[drawnCover] ?? '')?.[0]
