import type {Element} from 'hast'
import {h} from 'hastscript'

/** A photograph of a build, as pages show it: sizes in pixels as it is seen, turned the right way up. */
export interface Picture {
  /** Start of the addresses of its versions: `/builds/needle-box/photos/front-0f3a9c2e`. */
  address: string
  width: number
  height: number
  /** The widths that it is published in, rising. */
  widths: readonly number[]
}

/** The formats that photographs are published in: the smaller one for browsers that know it, one that all know. */
export const pictureFormats = ['webp', 'jpeg'] as const

export type PictureFormat = (typeof pictureFormats)[number]

const usualWidths = [480, 960, 1600]

/** Choose the widths to publish a picture in: usual ones, and its own where it is smaller than the largest. */
export function publishedWidths(width: number): number[] {
  const smaller = usualWidths.filter((usual) => usual < width)
  return smaller.length === usualWidths.length ? smaller : [...smaller, width]
}

/** Address one version of a picture. */
export function versionOf({address}: Picture, width: number, format: PictureFormat): string {
  return `${address}-${width}.${format}`
}

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
