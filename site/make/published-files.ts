import {readFile, stat} from 'node:fs/promises'
import {extname, join} from 'node:path'
import type {Build} from '../../plugins/build-file/build.ts'
import {placeOf} from '../../plugins/build-file/path.ts'
import type {Place, Problem} from '../../plugins/build-file/problem.ts'
import type {RuleName} from '../../plugins/checks/all.ts'
import {namedFiles, plainPath} from '../../plugins/checks/own-files.ts'
import type {Cache} from '../cache.ts'
import type {OpenBuild} from '../journal/read-journal.ts'
import type {Artefact} from '../page.ts'
import type {Picture} from '../pictures/picture.ts'
import {pictureFiles, readPicture} from '../pictures/picture-files.ts'

// What else a browser would open could run or reach outside, so it is not published: pages, scripts, drawings as SVG.
const published = new Set(
  'mp3 m4a ogg oga opus wav flac mp4 webm pdf txt csv dxf'.split(' ').map((ending) => `.${ending}`),
)
const pictures = new Set(
  'jpg jpeg png webp avif gif tif tiff svg heic heif'.split(' ').map((ending) => `.${ending}`),
)

/** What a build shows of its own folder: pictures by the names that the file gives them, and all files to publish. */
interface PublishedFiles {
  pictures: Record<string, Picture>
  files: Artefact[]
  /** Pictures that cannot be opened. */
  problems: Problem[]
}

/** Gather the pictures, recordings and other files that a build names and that lie in its folder. */
export async function publishedFiles(one: OpenBuild, cache: Cache): Promise<PublishedFiles> {
  const there = new Set(one.build.surroundings?.files)
  const found: PublishedFiles = {pictures: {}, files: [], problems: []}
  for (const {target, at} of new Map(namedFiles(one.build).map((each) => [each.target, each])).values()) {
    const inside = plainPath(target)
    const ending = extname(inside).toLowerCase()
    const path = join(one.folder, inside)
    if (!there.has(inside)) continue
    const picture = pictures.has(ending) ? await readPicture(path, one.slug) : undefined
    if (picture) {
      found.pictures[target] = picture
      found.files.push(...pictureFiles(picture, path, cache))
    } else if (pictures.has(ending)) found.problems.push(unreadable(target, at, one.build))
    else if (published.has(ending)) found.files.push(await copied(`/builds/${one.slug}/${inside}`, path))
  }
  return found
}

function unreadable(target: string, at: string | Place, build: Build): Problem<RuleName> {
  const place = typeof at === 'string' ? placeOf(build, at) : at
  const message = `the photograph ${target} cannot be opened; save it as JPEG, PNG or WebP`
  return {rule: 'picture-unreadable', severity: 'warning', ...place, message}
}

async function copied(address: string, path: string): Promise<Artefact> {
  const {size, mtimeMs, ino} = await stat(path)
  return {address, key: `${size} ${mtimeMs} ${ino}`, bytes: () => readFile(path)}
}
