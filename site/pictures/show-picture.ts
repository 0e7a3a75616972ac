import type {Element} from 'hast'
import {h} from 'hastscript'
import {type Picture, type PictureFormat, versionOf} from './picture.ts'

/** Show a picture at its own proportions; `sizes` says how wide it will be on the page. */
export function showPicture(picture: Picture, alt: string, sizes: string): Element {
  const {width, height, widths} = picture
  const set = (format: PictureFormat) =>
    widths.map((each) => `${versionOf(picture, each, format)} ${each}w`).join(', ')
  const middle = widths[Math.min(1, widths.length - 1)]!
  return h('picture', [
    h('source', {type: 'image/webp', srcSet: set('webp'), sizes}),
    h('img', {
      src: versionOf(picture, middle, 'jpeg'),
      srcSet: set('jpeg'),
      sizes,
      width,
      height,
      alt,
      loading: 'lazy',
      decoding: 'async',
    }),
  ])
}
