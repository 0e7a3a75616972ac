import {join} from 'node:path'
import {namedFiles, plainPath} from '../../plugins/checks/own-files.ts'
import {mostFileBytes} from '../journal/look-at-files.ts'
import {readPlainFile, statPlainFile} from '../journal/plain-file.ts'
import type {PlannedBuild} from '../journal/read-journal.ts'
import type {Cache} from '../kit/cache.ts'
import type {Artefact} from '../kit/page.ts'
import type {Picture} from '../kit/picture.ts'
import {pictureFiles, pictureOf} from './picture-files.ts'

/** What a build shows of its own folder: pictures by the names that the file gives them, and all files to publish. */
export interface PublishedFiles {
  pictures: Map<string, Picture>
  files: Artefact[]
}

/** Gather the pictures, recordings and other files that a build names and that lie in its folder. */
export async function publishedFiles(one: PlannedBuild, cache: Cache): Promise<PublishedFiles> {
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
  for (const inside of looked.files) {
    const file = await copied(`/builds/${slug}/${inside}`, join(folder, inside))
    if (file) files.set(file.address, file)
  }
  return {pictures, files: [...files.values()]}
}

async function copied(address: string, path: string): Promise<Artefact | undefined> {
  const there = await statPlainFile(path, mostFileBytes)
  if ('trouble' in there) return undefined
  const bytes = async () => {
    const read = await readPlainFile(path, mostFileBytes)
    if ('trouble' in read) throw new Error(`it is ${read.trouble} now`)
    return read.bytes
  }
  return {address, key: there.key, bytes}
}
