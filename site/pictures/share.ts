import {s} from 'hastscript'
import {woodPatterns} from '../../plugins/drawings/hero/woods.ts'
import {type Cache, keyOf} from '../kit/cache.ts'
import {markup, written} from '../kit/markup.ts'
import type {Artefact} from '../kit/page.ts'
import type {Hanging} from '../kit/site-data.ts'
import {pictureLibrary} from './library.ts'

/** The size in px that whoever shows a link has room for; common practice, no source. */
const shared = {width: 1200, height: 630} as const

const edge = 70

/** Lines in mm at the instrument's own size; inks as the style sheet has them in the light. */
const look = `
  .wood, .solid, .metal, .mark {stroke: #26211d; stroke-width: 1.4}
  .hole, .solid {fill: #26211d}
  .mark {stroke-width: 0.8; stroke-opacity: 0.6}
  .fret {stroke: #f2efe6; stroke-width: 1.6}
  .metal {fill: #d6d2c6}
  .string {stroke: #191614; stroke-width: 0.9}`

/** Draw what stands for a build where its address is passed on: its figure laid on its side, the head to the left. */
export function sharePicture(slug: string, hanging: Hanging, cache: Cache): Artefact {
  const svg = shareSvg(hanging)
  const key = keyOf('share', svg)
  const bytes = () => cache.bytes(key, () => drawn(svg))
  return {address: `/builds/${slug}/share.png`, key, bytes, keptAs: key}
}

async function drawn(svg: string): Promise<Uint8Array> {
  const sharp = await pictureLibrary()
  return sharp(Buffer.from(svg)).png({compressionLevel: 9}).toBuffer()
}

function shareSvg({shapes, frame, woods}: Hanging): string {
  const {width, height} = shared
  const scale = Math.min((width - 2 * edge) / frame.height, (height - 2 * edge) / frame.width)
  // Across the picture runs what hangs down the page.
  const [x, y] = [
    width / 2 - (frame.y + frame.height / 2) * scale,
    height / 2 - (frame.x + frame.width / 2) * scale,
  ].map((px) => px.toFixed(2))
  const size = scale.toFixed(4)
  const svg = s('svg', {xmlns: 'http://www.w3.org/2000/svg', width, height, fill: 'none'}, [
    written(`<style>${look}</style>`),
    s('defs', woodPatterns(woods)),
    s('rect', {width, height, fill: '#f8f7f3'}),
    s('path', {d: `M${x} 0V${height}`, stroke: '#26292b', strokeWidth: 5}),
    s(
      'g',
      {transform: `matrix(0 ${size} ${size} 0 ${x} ${y})`, strokeLineCap: 'round', strokeLineJoin: 'round'},
      [written(shapes)],
    ),
  ])
  return markup([svg], 'svg')
}
