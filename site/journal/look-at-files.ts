import {join} from 'node:path'
import pMap from 'p-map'
import type {Build, FileTrouble} from '../../plugins/build-file/schema/build.ts'
import {endingOf, isPicture, isPublished, namedFiles, plainPath} from '../../plugins/checks/own-files.ts'
import {isOwnName} from '../kit/own-names.ts'
import type {PictureLook} from '../pictures/look.ts'
import type {Steps} from '../steps/steps.ts'
import {type FileFault, readPlainFile, statPlainFile} from './plain-file.ts'

/** The largest photograph that is opened, and the largest file that is published; common practice, no source. */
export const mostPictureBytes = 50e6
export const mostFileBytes = 100e6

/** The files of a build's folder that it names: what can be shown and published, and what cannot. */
export interface LookedAt {
  /** Photographs that can be shown, by their paths in the folder. */
  pictures: ReadonlyMap<string, PictureLook>
  /** Recordings and other files that can be published; `key` changes whenever the file does. */
  files: readonly {file: string; key: string}[]
  troubles: FileTrouble[]
}

/** The endings of each format that is shown. */
const endingsOf: Readonly<Record<string, readonly string[]>> = {
  jpeg: ['jpg', 'jpeg'],
  png: ['png'],
  webp: ['webp'],
  gif: ['gif'],
  tiff: ['tif', 'tiff'],
  heif: ['avif', 'heic', 'heif'],
  svg: ['svg'],
}

const troubleOf = (fault: FileFault): FileTrouble['is'] =>
  fault === 'too large' || fault === 'no file' ? fault : 'unreadable'

/** What is one name on a disk that knows no capitals, or keeps accents in another form. */
const onAnyDisk = (file: string) => file.normalize('NFC').toLowerCase()

type LookingSteps = Pick<Steps, 'look' | 'lookedAt'>

/** Look at the files that a build names and that lie in its `folder` (absolute, resolved): `there` lists those. */
export async function lookAtFiles(
  build: Build,
  folder: string,
  there: readonly string[],
  steps: LookingSteps,
): Promise<LookedAt> {
  const all = new Set(there)
  const named = new Set(namedFiles(build).map(({target}) => plainPath(target)))
  const pictures = new Map<string, PictureLook>()
  const keys = new Map<string, string>()
  const own = [...named].filter((file) => all.has(file) && (isPicture(file) || isPublished(file)))
  const firstOf = new Map(own.toReversed().map((file) => [onAnyDisk(file), file]))
  const look = async (file: string): Promise<FileTrouble['is'] | undefined> => {
    if (!isPicture(file)) {
      if (isOwnName(file)) return 'name taken'
      if (firstOf.get(onAnyDisk(file)) !== file) return 'like another'
      const kind = await statPlainFile(join(folder, file), mostFileBytes, folder)
      if ('trouble' in kind) return troubleOf(kind.trouble)
      keys.set(file, kind.key)
      return undefined
    }
    const seen = await lookAt(join(folder, file), folder, steps)
    if (seen.trouble === undefined) pictures.set(file, seen)
    return seen.trouble
  }
  const otherwise = (file: string): FileTrouble[] => {
    const format = pictures.get(file)?.format
    const isOther = format !== undefined && !endingsOf[format]?.includes(endingOf(file))
    return isOther ? [{file, is: 'wrong ending', format}] : []
  }
  const found = await pMap(own, async (file) => ({file, is: await look(file)}), {concurrency: 4})
  const troubles = found.flatMap(({file, is}): FileTrouble[] => (is ? [{file, is}] : otherwise(file)))
  const files = own.flatMap((file) => {
    const key = keys.get(file)
    return key === undefined ? [] : [{file, key}]
  })
  return {pictures, files, troubles}
}

/** Look at a picture; one that lies there as it did when it was looked at is not read again. */
async function lookAt(
  path: string,
  folder: string,
  steps: LookingSteps,
): Promise<PictureLook | {trouble: FileTrouble['is']}> {
  const there = await statPlainFile(path, mostPictureBytes, folder)
  if ('trouble' in there) return {trouble: troubleOf(there.trouble)}
  const before = there.state && (await steps.lookedAt(there.state))
  if (before) return before
  const read = await readPlainFile(path, mostPictureBytes, folder)
  return 'trouble' in read ? {trouble: troubleOf(read.trouble)} : steps.look(read)
}
