import type {FileTrouble} from '../../build-file/schema/build.ts'
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

interface InTrouble {
  target: string
  is: Exclude<FileTrouble['is'], 'wrong ending'> | 'of another kind'
}

const noFile = 'is no file but a folder, a pipe or a device; lay a file of that name beside the build'

const pictureTroubles: Readonly<Record<InTrouble['is'], string>> = {
  'no file': noFile,
  unreadable: 'cannot be read; look at its rights, or lay it beside the build anew',
  'no picture': 'cannot be opened; save it as JPEG, PNG or WebP',
  'breaks off': 'breaks off before its end; copy it from the camera again',
  'too many pixels': 'has more than 100 million pixels; save it smaller',
  'too slender': 'is so much longer than wide that nothing of it can be seen on a page; cut it',
  'points elsewhere': 'is a drawing that leads to other files; save it as PNG',
  'too large': 'is larger than 50 MB; save it smaller',
  'name taken': 'has the name of a file that the page itself has; give it another name',
  'like another': 'has the name of another file but for capitals; give one of them another name',
  'of another kind': 'is of a format that browsers do not show; save it as JPEG, PNG or WebP',
}

/** Word that a photograph is shown, and called what it is not. */
export function pictureEnding({target, format = ''}: {target: string; format?: string | undefined}): Wording {
  const ending = format === 'jpeg' ? 'jpg' : format
  const name = target.replace(/[^./]+$/, ending)
  return {
    message: `the photograph ${target} is a ${format.toUpperCase()}; it is shown, and ${name} would name it rightly`,
  }
}

/** Word that HTML with film, sound or a frame is left out. */
export function mediaLeftOut({tag, target}: {tag: string; target: string}): Wording {
  const link = target === '' ? 'a link' : `[words](${target})`
  return {
    message: `<${tag}> is left out of the page, which plays and loads nothing by itself; write ${link} instead`,
  }
}

/** Word why a photograph cannot be shown. */
export function pictureUnreadable({target, is}: InTrouble): Wording {
  return {message: `the photograph ${target} ${pictureTroubles[is]}`}
}

/** Word why a file cannot be published. */
export function fileUnpublished({target, is}: InTrouble): Wording {
  const why =
    is === 'too large'
      ? 'is larger than 100 MB, more than many sites can hold; save it as MP3 or smaller'
      : is === 'name taken'
        ? 'would lie where the page has a file of its own; give it, or its folder, another name'
        : is === 'like another'
          ? 'has the name of another file but for capitals, and many disks keep only one of the two; give one of them another name, here and in the folder'
          : is === 'no file'
            ? noFile
            : is === 'of another kind'
              ? 'is of a kind that is not published, as what a browser opens could run; save it as PDF, MP3, MP4, WebM, CSV, DXF or plain text'
              : 'cannot be read; look at its rights, or lay it beside the build anew'
  return {message: `the file ${target} is not published: it ${why}`}
}
