import type {Build} from '../build-file/schema/build.ts'
import {nearest} from '../build-file/schema/nearest.ts'
import * as words from '../words/findings/journal.ts'
import {buildLinked, endingOf, isPicture, isPublished, namedFiles, plainPath} from './own-files.ts'
import {rule} from './rule.ts'

/** Write a whole file with nothing but prose. */
const prose = (text: string) => `---\ntitle: Needle box\n---\n\n${text}\n`

/** The files that a build names and that are in trouble, each at the first place that names it. */
function inTrouble(build: Build) {
  const named = new Map(
    namedFiles(build)
      .toReversed()
      .map((one) => [plainPath(one.target), one]),
  )
  return (build.surroundings?.troubles ?? []).flatMap(({file, is, format}) => {
    const {target, at} = named.get(file) ?? {}
    return target === undefined || at === undefined
      ? []
      : [{at, target, is, format, isPicture: isPicture(file)}]
  })
}

/** The files of those that cannot be shown or published; one of a wrong ending can. */
const notShown = (build: Build) =>
  inTrouble(build).flatMap((one) => (one.is === 'wrong ending' ? [] : [{...one, is: one.is}]))

/** Files that are there and named as a photograph or a link, and of a kind that no page can show or give away. */
function unshown(build: Build, as: 'photograph' | 'link') {
  const {files = []} = build.surroundings ?? {}
  return namedFiles(build).flatMap(({target, at, what}) => {
    const path = plainPath(target)
    const isOther = !isPicture(path) && (what === 'photograph' || !isPublished(path))
    const isNamed = what === as && files.includes(path) && endingOf(path) !== '' && !buildLinked(path)
    return isNamed && isOther ? [{at, target, is: 'of another kind' as const}] : []
  })
}

export const fileRules = {
  'file-missing': rule({
    severity: 'warning',
    about: 'journal',
    what: 'A photograph, recording or link whose file is not there.',
    why: 'The page would show a gap.',
    mend: 'Lay the file beside the build, or mend its name.',
    passes: {text: 'cover: front.jpg', files: ['front.jpg']},
    fails: {text: 'cover: frnt.jpg', files: ['front.jpg']},
    find: (build) => {
      const {surroundings} = build
      if (!surroundings) return []
      const {files, builds} = surroundings
      return namedFiles(build).flatMap(({target, at, what}) => {
        const path = plainPath(target)
        const linked = what === 'link' ? buildLinked(path) : undefined
        if (files.includes(path) || builds.some(({slug}) => slug === linked)) return []
        if (path.startsWith('../') && !linked) return []
        return [{at, what, target, likely: nearest(path, files)}]
      })
    },
    says: words.fileMissing,
  }),
  'file-outside': rule({
    severity: 'warning',
    about: 'journal',
    what: 'A file outside the folder of the build.',
    why: 'Only what lies in the folder of a build is published with it.',
    mend: 'Copy it into the folder of the build.',
    passes: {text: 'cover: front.jpg', files: ['front.jpg']},
    fails: {text: 'cover: ../pictures/front.jpg', files: []},
    find: (build) =>
      namedFiles(build).filter(({target, what}) => {
        const path = plainPath(target)
        const isOutside = path.startsWith('../') || target.startsWith('/')
        return isOutside && !(what === 'link' && buildLinked(path))
      }),
    says: words.fileOutside,
  }),
  'picture-unreadable': rule({
    severity: 'warning',
    about: 'journal',
    what: 'A photograph that cannot be shown.',
    why: 'It is torn, empty, far too large or slender, or leads to other files; words stand in its place on the page.',
    mend: 'Save it anew as JPEG, PNG or WebP, whole and by itself.',
    passes: {text: 'cover: front.jpg', files: ['front.jpg'], troubles: []},
    fails: {
      text: 'cover: front.jpg',
      files: ['front.jpg'],
      troubles: [{file: 'front.jpg', is: 'breaks off'}],
    },
    find: (build) => [...notShown(build).filter(({isPicture}) => isPicture), ...unshown(build, 'photograph')],
    says: words.pictureUnreadable,
  }),
  'picture-ending': rule({
    severity: 'remark',
    about: 'journal',
    what: 'A photograph whose ending says another format than it is.',
    why: 'It is shown all the same, but other programs go by the ending.',
    mend: 'Give it the ending of what it is, here and in the folder.',
    passes: {text: 'cover: front.jpg', files: ['front.jpg'], troubles: []},
    fails: {
      text: 'cover: front.jpg',
      files: ['front.jpg'],
      troubles: [{file: 'front.jpg', is: 'wrong ending', format: 'png'}],
    },
    find: (build) => inTrouble(build).filter(({is}) => is === 'wrong ending'),
    says: words.pictureEnding,
  }),
  'media-left-out': rule({
    severity: 'warning',
    about: 'journal',
    what: 'Film, sound or a frame written as HTML in the prose.',
    why: 'A page holds nothing that loads or plays by itself, so it is left out.',
    mend: 'Write a link to the file; a recording may stand under recordings.',
    passes: prose('[The film](film.mp4)'),
    fails: prose('<video src="film.mp4" controls></video>'),
    find: ({rawMedia = []}) => rawMedia.map(({place, ...one}) => ({...one, at: place})),
    says: words.mediaLeftOut,
  }),
  'file-unpublished': rule({
    severity: 'warning',
    about: 'journal',
    what: 'A recording or another file that cannot be published as it is.',
    why: 'It cannot be read, is larger than a site can hold, or has the name of a file that the page itself has, or of another one but for capitals, of which many disks keep one.',
    mend: 'Make it smaller, or give it another name.',
    passes: {text: 'recordings: [{file: slow.mp3, says: Slow}]', files: ['slow.mp3'], troubles: []},
    fails: {
      text: 'recordings: [{file: slow.wav, says: Slow}]',
      files: ['slow.wav'],
      troubles: [{file: 'slow.wav', is: 'too large'}],
    },
    find: (build) => [...notShown(build).filter(({isPicture}) => !isPicture), ...unshown(build, 'link')],
    says: words.fileUnpublished,
  }),
  'alt-missing': rule({
    severity: 'remark',
    about: 'journal',
    what: 'A photograph without words for those who do not see it.',
    why: 'A reader with a screen reader, or without the picture, learns nothing from it.',
    mend: 'Write a few words in the square brackets before its address.',
    passes: prose('![The box from the front](front.jpg)'),
    fails: prose('![](front.jpg)'),
    find: ({links}) =>
      links
        .filter(({isPicture, alt}) => isPicture && !alt?.trim())
        .map(({target, place}) => ({at: place, target})),
    says: words.altMissing,
  }),
}
