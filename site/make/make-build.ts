import type {ElementContent} from 'hast'
import {h} from 'hastscript'
import {type PageInput, renderPageBody} from '../../plugins/render-page-body.ts'
import {withPrefix} from '../html/with-prefix.ts'
import type {Picture} from '../pictures/picture.ts'
import {showPicture} from '../pictures/show-picture.ts'
import type {MadeBuild} from '../site-data.ts'
import {hangingOf} from './hanging-of.ts'
import {wordsOf} from './words-of.ts'

/** All that the costly part of a build's pages is made of. */
export interface BuildParts extends Omit<PageInput, 'picture'> {
  /** The build's photographs, by the names that its file gives them. */
  pictures: Readonly<Record<string, Picture>>
}

/** Photographs of the prose fill its column. */
const inTheColumn = '(min-width: 40rem) 36rem, 100vw'

/** Word and draw a build: made of its input alone, so that it can be kept by it. */
export function makeBuild(input: BuildParts): MadeBuild {
  const {pictures, pathPrefix, ...page} = input
  const picture = ({target, alt, title}: {target: string; alt: string; title?: string}): ElementContent[] => {
    const found = pictures[target]
    if (!found) return [h('em', alt || title || target)]
    const shown = withPrefix(showPicture(found, alt || title || '', inTheColumn), pathPrefix)
    return [title ? h('span.captioned', [shown, h('span.caption', title)]) : shown]
  }
  const {html, headings} = renderPageBody({...page, pathPrefix, picture})
  return {html, headings: [...headings], hanging: hangingOf(input.plan), words: wordsOf(input.text)}
}
