import {join} from 'node:path'
import {namedFiles, plainPath} from '../../plugins/checks/own-files.ts'
import {mostFileBytes} from '../journal/look-at-files.ts'
import {readPlainFile} from '../journal/plain-file.ts'
import type {PlannedBuild} from '../journal/read-journal.ts'
import type {Cache} from '../kit/cache.ts'
import type {Artefact} from '../kit/page.ts'
import type {Picture} from '../kit/picture.ts'
import {changedMeanwhile, pictureFiles, pictureOf} from './picture-files.ts'

/** What a build shows of its own folder: pictures by the names that the file gives them, and all files to publish. */
export interface PublishedFiles {
  pictures: Map<string, Picture>
  files: Artefact[]
}

/** Gather the pictures, recordings and other files that a build names and that lie in its folder. */
export function publishedFiles(one: PlannedBuild, cache: Cache): PublishedFiles {
  const {slug, folder, looked} = one
  const pictures = new Map<string, Picture>()
  const files = new Map<string, Artefact>()
  for (const {target} of namedFiles(one.build)) {
    const inside = plainPath(target)
    const look = looked.pictures.get(inside)
    if (!look) continue
    const picture = pictureOf(inside, look, slug)
    pictures.set(target, picture)
    // One picture named twice, or lying there twice, is one.
    for (const file of pictureFiles(picture, join(folder, inside), look.hash, cache))
      files.set(file.address, file)
  }
  for (const {file, key} of looked.files) {
    const address = `/builds/${slug}/${file}`
    files.set(address, {address, key, bytes: () => bytesOf(join(folder, file), key)})
  }
  return {pictures, files: [...files.values()]}
}

/** Read a file as it was looked at; one that has changed since is looked at with the next build. */
async function bytesOf(path: string, key: string): Promise<Uint8Array> {
  const read = await readPlainFile(path, mostFileBytes)
  if ('trouble' in read || read.key !== key) throw changedMeanwhile(path)
  return read.bytes
}
