import {basename, extname} from 'node:path'
import {mostPictureBytes} from '../journal/look-at-files.ts'
import {readPlainFile} from '../journal/plain-file.ts'
import {type Cache, keyOf} from '../kit/cache.ts'
import type {Artefact} from '../kit/page.ts'
import {type Picture, type PictureFormat, pictureFormats, publishedWidths, versionOf} from '../kit/picture.ts'
import {opened, type PictureLook} from '../pictures/look.ts'

/** A longer name would not fit beside its width and ending in what a disk takes for a name. */
const longestName = 60

/** Name a picture that can be shown, by its file's name and by what is in it. */
export function pictureOf(file: string, {hash, width, height}: PictureLook, slug: string): Picture {
  const name = basename(file, extname(file))
    .normalize('NFD')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .slice(0, longestName)
    .replaceAll(/^-+|-+$/g, '')
  return {
    address: `/builds/${slug}/photos/${name || 'picture'}-${hash.slice(0, 8)}`,
    width,
    height,
    widths: publishedWidths(width),
  }
}

/** List the published versions of a picture file (absolute path); each is encoded once and kept in the cache. */
export function pictureFiles(picture: Picture, path: string, hash: string, cache: Cache): Artefact[] {
  return picture.widths.flatMap((width) =>
    pictureFormats.map((format) => {
      const address = versionOf(picture, width, format)
      const encoded = async () => encodePicture(await bytesOf(path, hash), width, format)
      const keptAs = keyOf('picture', hash, String(width), format)
      return {address, key: address, bytes: () => cache.bytes(keptAs, encoded), keptAs}
    }),
  )
}

/** The fault of a file that is no longer as it was looked at. */
export const changedMeanwhile = (path: string): Error =>
  new Error(`${basename(path)} changed while it was being read`)

/** Read the bytes that were looked at; a file that has changed since is looked at with the next build. */
async function bytesOf(path: string, hash: string): Promise<Uint8Array> {
  const read = await readPlainFile(path, mostPictureBytes)
  if ('trouble' in read || keyOf(read.bytes) !== hash) throw changedMeanwhile(path)
  return read.bytes
}

/**
 * Write a picture at `width` pixels, the right way up. What a camera notes in a file (place, time, device) is left
 * out. The same bytes give the same bytes.
 */
async function encodePicture(picture: Uint8Array, width: number, format: PictureFormat): Promise<Uint8Array> {
  const turned = (await opened(picture))
    .rotate()
    .resize({width, withoutEnlargement: true})
    .flatten({background: '#ffffff'})
  return format === 'webp'
    ? turned.webp({quality: 78}).toBuffer()
    : turned.jpeg({quality: 80, mozjpeg: true}).toBuffer()
}
