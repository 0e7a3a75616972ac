import type {Check} from './check.ts'

/** Find a photograph of the prose without words for those who do not see it. */
export const altMissing: Check = {
  rule: 'alt-missing',
  find: ({links}) =>
    links
      .filter(({isPicture, alt}) => isPicture && !alt?.trim())
      .map(({target, place}) => ({
        at: place,
        message: `${target} has no words for those who do not see it; its caption is used. Write them in the square brackets: ![the box from the front](${target})`,
      })),
}
