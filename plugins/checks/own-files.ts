import type {Build} from '../build-file/schema/build.ts'
import type {Place} from '../build-file/schema/problem.ts'

/** A file that a build names, and where it names it: a path of the front matter, or a place of the prose. */
interface NamedFile {
  target: string
  at: string | Place
  what: 'photograph' | 'recording' | 'link'
}

/** List every file that a build names: cover, recordings, and the pictures and links of its prose. */
export function namedFiles({values, links}: Build): NamedFile[] {
  const cover: NamedFile[] = values.cover
    ? [{target: values.cover.value, at: 'cover', what: 'photograph'}]
    : []
  const recordings = (values.recordings ?? []).flatMap<NamedFile>(({file}, i) =>
    file ? [{target: file.value, at: `recordings.${i + 1}.file`, what: 'recording'}] : [],
  )
  const prose = links.map<NamedFile>(({target, isPicture, place}) => ({
    target,
    at: place,
    what: isPicture ? 'photograph' : 'link',
  }))
  return [...cover, ...recordings, ...prose]
}

/** Write a relative path without its detours; one that climbs out of its folder starts with `../`. */
export function plainPath(target: string): string {
  const parts: string[] = []
  for (const part of target.split('/')) {
    if (part === '' || part === '.') continue
    if (part === '..' && parts.length > 0 && parts.at(-1) !== '..') parts.pop()
    else parts.push(part)
  }
  return parts.join('/')
}

/** The build that a link leads to, by its file: `other.md` or `../other/index.md`. */
export const buildLinked = (path: string): string | undefined =>
  /^(?:\.\.\/)?([a-z0-9-]+)(?:\.md|\/index\.md)$/.exec(path)?.[1]

const pictureEndings = new Set('jpg jpeg png webp avif gif tif tiff svg heic heif'.split(' '))

/** Tell by its ending whether a file is a photograph. */
export const isPicture = (path: string): boolean => pictureEndings.has(endingOf(path))

/** The ending of a file's name in small letters, without its point; empty where it has none. */
export const endingOf = (path: string): string => /[^/]\.([^./]+)$/.exec(path)?.[1]?.toLowerCase() ?? ''

const recordingEndings = new Set('mp3 m4a ogg oga opus wav flac'.split(' '))

/** Tell by its ending whether a file is a recording. */
export const isRecording = (path: string): boolean => recordingEndings.has(endingOf(path))

/** List those of a build's recordings that its prose leads to, each with the name of its place there. */
export const toldInProse = ({values: {recordings = []}, links}: Build): {path: string; anchor: string}[] =>
  recordings.flatMap(({file}, at) => {
    const path = plainPath(file?.value ?? '')
    const isTold = isRecording(path) && links.some((one) => !one.isPicture && plainPath(one.target) === path)
    return isTold ? [{path, anchor: `Recording-${at + 1}`}] : []
  })

/** What else of a build's folder is published; the rest a browser would open could run or reach outside. */
const publishedEndings = new Set([...recordingEndings, ...'mp4 webm pdf txt csv dxf'.split(' ')])

/** Tell by its ending whether a file that is no photograph is published. */
export const isPublished = (path: string): boolean => publishedEndings.has(endingOf(path))
