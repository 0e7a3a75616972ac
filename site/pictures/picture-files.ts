import {createHash} from 'node:crypto'
import {readFile} from 'node:fs/promises'
import {basename, extname} from 'node:path'
import sharp from 'sharp'
import {type Cache, keyOf} from '../cache.ts'
import type {Artefact} from '../page.ts'
import {type Picture, type PictureFormat, pictureFormats, publishedWidths, versionOf} from './picture.ts'

/** Read the size of a picture file (absolute path) and name it by what is in it; undefined where it is no picture. */
export async function readPicture(path: string, slug: string): Promise<Picture | undefined> {
  const bytes = await readFile(path).catch(() => undefined)
  const read =
    bytes &&
    (await sharp(bytes)
      .metadata()
      .catch(() => undefined))
  if (!bytes || !read?.width || !read.height) return undefined
  // Orientations 5 to 8 lie on their side (EXIF 2.3, tag 0x0112).
  const isTurned = (read.orientation ?? 1) >= 5
  const [width, height] = isTurned ? [read.height, read.width] : [read.width, read.height]
  const name = basename(path, extname(path))
    .normalize('NFD')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
  const hash = createHash('sha256').update(bytes).digest('hex').slice(0, 8)
  return {
    address: `/builds/${slug}/photos/${name || 'picture'}-${hash}`,
    width,
    height,
    widths: publishedWidths(width),
  }
}

/** List the published versions of a picture file (absolute path); each is encoded once and kept in the cache. */
export function pictureFiles(picture: Picture, path: string, cache: Cache): Artefact[] {
  return picture.widths.flatMap((width) =>
    pictureFormats.map((format) => {
      const address = versionOf(picture, width, format)
      const bytes = () => cache.bytes(keyOf('picture', address), () => encodePicture(path, width, format))
      return {address, key: address, bytes}
    }),
  )
}

/**
 * Write a picture file (absolute path) at `width` pixels, the right way up. What a camera notes in a file (place,
 * time, device) is left out. The same file gives the same bytes.
 */
async function encodePicture(path: string, width: number, format: PictureFormat): Promise<Uint8Array> {
  const picture = sharp(path)
    .rotate()
    .resize({width, withoutEnlargement: true})
    .flatten({background: '#ffffff'})
  return format === 'webp'
    ? picture.webp({quality: 78}).toBuffer()
    : picture.jpeg({quality: 80, mozjpeg: true}).toBuffer()
}
