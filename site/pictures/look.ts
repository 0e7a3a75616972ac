import type {Metadata, Sharp} from 'sharp'
import type {FileTrouble} from '../../plugins/build-file/schema/build.ts'
import {keyOf} from '../kit/cache.ts'
import {isFilledUp} from './filled-up.ts'
import {pictureLibrary} from './library.ts'
import {pointsNowhere} from './svg-leads.ts'

/** What a picture file is: its size in pixels as it is seen, or why it cannot be shown. */
export interface PictureLook {
  /** Stands for its bytes. */
  hash: string
  width: number
  height: number
  /** What its bytes are, whatever it is called. */
  format?: string | undefined
  trouble?: FileTrouble['is'] | undefined
}

/** The most pixels of a photograph: more than any camera of the trade takes; common practice, no source. */
export const mostPixels = 100e6

/** The formats that are opened; each is known by its bytes, whatever the file is called. */
const formats = new Set(['jpeg', 'png', 'webp', 'gif', 'tiff', 'heif', 'svg'])

/** The longest side that WebP can hold (RFC 9649, 3: 14 bits), at the widths that pictures are published in. */
const longestSide = 16_383
const widest = 1600

/** How much longer than wide a picture may be; beyond, nothing of it is left at a page's width. */
const mostSlender = 100

/** Look at a picture as a browser would: all of it is decoded, small, so that one that breaks off is found out. */
export async function lookAtPicture(bytes: Uint8Array): Promise<PictureLook> {
  const hash = keyOf(bytes)
  const nothing = {hash, width: 0, height: 0}
  const read = bytes.length > 0 ? await (await opened(bytes)).metadata().catch(() => undefined) : undefined
  if (!read?.width || !read.height || !formats.has(read.format ?? ''))
    return {...nothing, trouble: 'no picture'}
  if (read.format === 'svg' && !pointsNowhere(bytes)) return {...nothing, trouble: 'points elsewhere'}
  const [width, height] = asSeen(read)
  const look = {hash, width, height, format: read.format}
  if (width * height > mostPixels) return {...look, trouble: 'too many pixels'}
  if (Math.max(width, height) > mostSlender * Math.min(width, height))
    return {...look, trouble: 'too slender'}
  if (height * Math.min(1, widest / width) > longestSide) return {...look, trouble: 'too slender'}
  if (isFilledUp(bytes, read.format)) return {...look, trouble: 'breaks off'}
  const isWhole = await (await opened(bytes))
    .resize({width: 32, height: 32, fit: 'fill'})
    .raw()
    .toBuffer()
    .then(
      () => true,
      () => false,
    )
  return isWhole ? look : {...look, trouble: 'breaks off'}
}

/**
 * Open a picture by its bytes, never by a path, so that nothing beside it can be read; the first of several.
 */
export async function opened(bytes: Uint8Array): Promise<Sharp> {
  const sharp = await pictureLibrary()
  return sharp(bytes, {
    failOn: 'truncated',
    limitInputPixels: mostPixels * 4,
    sequentialRead: true,
    pages: 1,
  })
}

/** Orientations 5 to 8 lie on their side (EXIF 2.3, tag 0x0112). */
function asSeen({width, height, orientation = 1}: Metadata): [number, number] {
  return orientation >= 5 ? [height, width] : [width, height]
}
