import type {Check} from './check.ts'

/** Pitches that fall from one string to the next, from the player's bass side; told once. */
export const pitchesOutOfOrder: Check = {
  rule: 'pitches-out-of-order',
  find: ({values}) => {
    const {strings = []} = values
    const at = strings.findIndex(({note}, i) => {
      const before = strings[i - 1]?.note
      return note !== undefined && before !== undefined && note.midi < before.midi
    })
    const note = strings[at]?.note
    const before = strings[at - 1]?.note
    if (!note || !before) return []
    return [
      {
        at: `strings.${at + 1}.note`,
        message: `${note.text} is lower than ${before.text} before it, and strings are listed from the player’s bass side; leave it where the tuning is meant so`,
        cause: `strings.${at}.note`,
      },
    ]
  },
}
