import type {Check} from './check.ts'

/** More parts than a cut list can be made for. */
export const tooManyParts: Check = {
  rule: 'too-many-parts',
  find: (_, {tooManyParts: found}) =>
    found
      ? [
          {
            at: 'parts',
            message: `${found.count} parts are listed; a cut list is made for ${found.most} at most`,
          },
        ]
      : [],
}
