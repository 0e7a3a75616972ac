import {h} from 'hastscript'
import {markup, withPrefix, written} from '../kit/markup.ts'
import type {Layout} from '../kit/page.ts'
import type {Surround} from '../kit/site-data.ts'
import {head} from './head.ts'

/** Wrap a sheet that is made to be printed: nothing around it but the way back to where it came from. */
export function sheet(around: Surround): Layout {
  return (data) => {
    const page = h('html', {lang: 'en'}, [
      head(around, data),
      h('body.sheet', [
        h('header.way-back', [
          h('a', {href: data.within ?? '/'}, data.within ? 'Back to the build' : around.title),
        ]),
        h('main#Page', {tabIndex: -1}, [written(data.content)]),
      ]),
    ])
    return `<!doctype html>\n${markup(withPrefix(page, around.prefix))}\n`
  }
}
