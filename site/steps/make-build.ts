import {h} from 'hastscript'
import type {Problem} from '../../plugins/build-file/schema/problem.ts'
import type {RuleName} from '../../plugins/checks/all.ts'
import type {MakePicture} from '../../plugins/rehype/rehype-pictures.ts'
import {type PageBody, type PageInput, renderPageBody} from '../../plugins/rehype/render-page-body.ts'
import {makersWords} from '../../plugins/words/makers-words.ts'
import {withPrefix} from '../kit/markup.ts'
import {type Picture, showPicture} from '../kit/picture.ts'
import {wordsOf} from '../kit/search-words.ts'
import type {MadeBuild} from '../kit/site-data.ts'
import {type Failed, programFails, proseAsWritten, tried} from './program-fails.ts'

/** All that the costly part of a build's pages is made of. */
interface BuildParts extends Omit<PageInput, 'picture' | 'failed' | 'keepDrawing'> {
  /** The build's photographs, by the names that its file gives them. */
  pictures: ReadonlyMap<string, Picture>
}

/** Photographs of the prose fill its column. */
const inTheColumn = '(min-width: 40rem) 36rem, 100vw'

/**
 * Word a build and draw what its page shows: made of its input alone, so that it can be kept by it. What this program
 * fails on is left out, told in `faults` and on the page; the prose and whatever else can be made of the build stand.
 */
export function makeBuild(input: BuildParts): Omit<MadeBuild, 'hanging'> {
  const faults: Problem<RuleName>[] = []
  const failed = (what: string, error: unknown) => void faults.push(programFails(`show ${what} of`, error))
  const drawings: Record<string, string> = {}
  const {headings, ...body} = bodyOf(input, drawings, failed)
  const words = tried('the words', () => wordsOf(`${input.text}\n${makersWords(input)}`), failed) ?? ''
  return {...body, headings: [...headings], drawings, words, faults}
}

/** Where the prose cannot be set, it stands as it was written, above what was computed. */
function bodyOf({pictures, ...page}: BuildParts, drawings: Record<string, string>, failed: Failed): PageBody {
  const picture = pictureMaker(pictures, page.pathPrefix)
  const parts = {
    ...page,
    picture,
    keepDrawing: (name: string, svg: string) => {
      drawings[`${name}.svg`] = svg
      return `${page.pathPrefix}builds/${page.plan.slug}/drawings/${name}.svg`
    },
    failed: (name: string, error: Error) => failed(`the section ${name}`, error),
  }
  const whole = tried('the page', () => renderPageBody(parts), failed)
  if (whole) return whole
  const {tree: _, ...others} = parts
  const computed = tried('what is computed', () => renderPageBody({...others, text: ''}), failed)
  const {state = '', drawing = '', html = '', headings = []} = computed ?? {}
  return {state, drawing, html: `${proseAsWritten(page.text)}\n${html}`, headings}
}

function pictureMaker(pictures: BuildParts['pictures'], pathPrefix: string): MakePicture {
  return ({target, alt, title}) => {
    const found = pictures.get(target)
    if (!found) return [h('em', `${alt || title || target} (this photograph cannot be shown)`)]
    const shown = withPrefix(showPicture(found, alt || title || '', inTheColumn), pathPrefix)
    return [title ? h('span.captioned', [shown, h('span.caption', title)]) : shown]
  }
}
