import {only, type Wording} from './wording.ts'

export function unknownRule({name, likely}: {name: string; likely: string | undefined}): Wording {
  return {
    message: `${name} is not a rule that is known${likely ? `; was ${likely} meant?` : ''}`,
    expected: only(likely),
  }
}
