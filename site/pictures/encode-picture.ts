import sharp from 'sharp'
import type {PictureFormat} from './picture.ts'

/**
 * Write a picture file (absolute path) at `width` pixels, the right way up. What a camera notes in a file (place,
 * time, device) is left out. The same file gives the same bytes.
 */
export async function encodePicture(path: string, width: number, format: PictureFormat): Promise<Uint8Array> {
  const picture = sharp(path)
    .rotate()
    .resize({width, withoutEnlargement: true})
    .flatten({background: '#ffffff'})
  return format === 'webp'
    ? picture.webp({quality: 78}).toBuffer()
    : picture.jpeg({quality: 80, mozjpeg: true}).toBuffer()
}
