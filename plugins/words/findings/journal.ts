import {only, type Wording} from './wording.ts'

type What = 'photograph' | 'recording' | 'link'

export function basedOnMissing({named, likely}: {named: string; likely: string | undefined}): Wording {
  return {
    message: `there is no build ${named} in this journal${likely ? `; was ${likely} meant?` : ''}`,
    expected: only(likely),
  }
}

/** `line` are the slugs from this build over those it was copied from, back to it. */
export function basedOnCircle({line}: {line: readonly string[]}): Wording {
  return {
    message: `this build is copied from itself: ${line.join(' from ')}; leave based-on out in the one that came first`,
  }
}

export function finishedBeforeStarted({started, finished}: {started: string; finished: string}): Wording {
  return {message: `finished ${finished} is before started ${started}; one of the two is a slip`}
}

export function fileMissing({
  what,
  target,
  likely,
}: {
  what: What
  target: string
  likely: string | undefined
}): Wording {
  return {
    message: `the ${what} ${target} is not there${likely ? `; was ${likely} meant?` : ''}`,
    expected: only(likely),
  }
}

export function fileOutside({what, target}: {what: What; target: string}): Wording {
  return {
    message: `the ${what} ${target} lies outside this build’s folder and is not published; copy it beside the build`,
  }
}

export function altMissing({target}: {target: string}): Wording {
  return {
    message: `${target} has no words for those who do not see it; its caption is used. Write them in the square brackets: ![the box from the front](${target})`,
  }
}
