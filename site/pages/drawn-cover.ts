import type {Element} from 'hast'
import {h} from 'hastscript'
import {drawnCover as file} from '../kit/own-names.ts'
import type {SiteBuild} from '../kit/site-data.ts'

/** Show the drawn cover of a build that has no photograph; undefined where there is none. */
export function drawnCover({slug, made: {drawings}}: SiteBuild, alt: string): Element | undefined {
  const [, width, height] = /<svg[^>]* width="(\d+)" height="(\d+)"/.exec(drawings[file] ?? '') ?? []
  if (!width || !height) return undefined
  const src = `/builds/${slug}/drawings/${file}`
  // In a list most pictures are out of sight.
  return h('img', {src, alt, width, height, ...(alt ? {} : {loading: 'lazy'})})
}
