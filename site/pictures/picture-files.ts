import {mkdir, readFile, rename, writeFile} from 'node:fs/promises'
import {dirname, join} from 'node:path'
import type {Artefact} from '../publish/page.ts'
import {encodePicture} from './encode-picture.ts'
import {type Picture, type PictureFormat, pictureFormats, versionOf} from './picture.ts'

/** List the published versions of a picture; each is encoded once and kept in `cache` (absolute). */
export function pictureFiles(picture: Picture, path: string, cache: string): Artefact[] {
  return picture.widths.flatMap((width) =>
    pictureFormats.map((format) => {
      const address = versionOf(picture, width, format)
      const kept = join(cache, `${address.split('/').at(-1)}`)
      return {address, key: address, bytes: () => encodeOnce(path, width, format, kept)}
    }),
  )
}

async function encodeOnce(path: string, width: number, format: PictureFormat, kept: string) {
  const there = await readFile(kept).catch(() => undefined)
  if (there) return there
  const bytes = await encodePicture(path, width, format)
  await mkdir(dirname(kept), {recursive: true})
  await writeFile(`${kept}.${process.pid}`, bytes)
  await rename(`${kept}.${process.pid}`, kept)
  return bytes
}
