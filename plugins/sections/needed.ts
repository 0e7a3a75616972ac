import type {PhrasingContent} from 'mdast'
import {text} from './kit/inline.ts'

/** Say which keys would bring a section: `Add box.length and scale.length to the file.` */
export function needed(keys: readonly string[]): PhrasingContent[] {
  const named = keys.flatMap((key, at): PhrasingContent[] => [
    ...(at === 0 ? [] : [text(at === keys.length - 1 ? ' and ' : ', ')]),
    {type: 'inlineCode', value: key},
  ])
  return [text('Add '), ...named, text(' to the file.')]
}
