import type {Place} from './problem.ts'
import type {BuildValues} from './schema.ts'

/** A heading of the body that starts with a date. */
export interface DayEntry {
  iso: string
  title: string
  minutes?: number
  place: Place
}

/** `::name{attributes}` alone on a line of the body. */
export interface Directive {
  name: string
  attributes: Readonly<Record<string, string>>
  place: Place
}

/** `:value[path]` in a sentence of the body. */
interface ValueReference {
  path: string
  place: Place
}

/** A file that a build names and that cannot be shown or published, and why. */
export interface FileTrouble {
  /** Its path in the build's folder. */
  file: string
  is:
    | 'unreadable'
    | 'no file'
    | 'no picture'
    | 'breaks off'
    | 'too many pixels'
    | 'too slender'
    | 'points elsewhere'
    | 'too large'
    | 'name taken'
    | 'like another'
    | 'wrong ending'
  /** What it is, where its ending says otherwise. */
  format?: string | undefined
}

/** What prose can have so much of that a short file makes an endless page. */
export type Excess =
  | 'cells'
  | 'definitions'
  | 'depth'
  | 'headings'
  | 'items'
  | 'lines'
  | 'paragraph'
  | 'references'
  | 'signs'

/** What the folder around a build tells: needed by checks that look past the file itself. */
export interface Surroundings {
  /** Files of the build's own folder, relative to it, once symbolic links are resolved. */
  files: readonly string[]
  /** The other builds of the journal: their slugs, and what each was copied from. */
  builds: readonly {slug: string; basedOn?: string}[]
  /** Those of the files that cannot be shown or published; absent where nobody has looked. */
  troubles?: readonly FileTrouble[] | undefined
}

/**
 * One build file, read. `values` are as written; nothing is assumed here.
 * `places` gives the place of the value at a dotted path (`strings.1.gauge`; lists count from 1 in paths),
 * `keys` that of its key.
 */
export interface Build {
  slug: string
  values: BuildValues
  places: Readonly<Record<string, Place>>
  keys: Readonly<Record<string, Place>>
  days: readonly DayEntry[]
  /** Headings that look like a day or like hours in a form that is not read, each at the words it is about. */
  unclear?:
    | readonly {is: 'day' | 'hours'; written: string; expected: readonly string[]; place: Place}[]
    | undefined
  /** What the ticked tasks of the body say. */
  ticked?: readonly string[]
  /** Steps that `:step[name]` says are done. */
  steps?: readonly {name: string; place: Place}[]
  /** Pictures and links of the body that point into the build's folder. */
  links: readonly {
    target: string
    alt?: string | undefined
    isPicture: boolean
    place: Place
  }[]
  /** Film, sound and frames as HTML of the body's own, which the page leaves out; with what they lead to. */
  rawMedia?: readonly {tag: string; target: string; place: Place}[] | undefined
  directives: readonly Directive[]
  references: readonly ValueReference[]
  /** Where the prose is nested so deep that it is not read. */
  tooNested?: Place | undefined
  /** Where the prose has so much of something that it is not read, and of what. */
  tooMuch?: {of: Excess; place: Place} | undefined
  /** Absent where only the text is known. */
  surroundings?: Surroundings | undefined
}

/** What the body of a build file tells besides its prose. */
export type Body = Pick<
  Build,
  | 'days'
  | 'unclear'
  | 'ticked'
  | 'steps'
  | 'links'
  | 'rawMedia'
  | 'directives'
  | 'references'
  | 'tooNested'
  | 'tooMuch'
>

/** Make the build of a file that nothing could be read from. */
export const emptyBuild = (slug: string): Build => ({
  slug,
  values: {},
  places: {},
  keys: {},
  days: [],
  links: [],
  directives: [],
  references: [],
})

/** Name a build by its file: `needle-box.md` and `needle-box/index.md` are both `needle-box`. */
export function slugOf(path: string): string {
  const [file = '', folder = ''] = path.split(/[/\\]/).reverse()
  return file === 'index.md' && folder ? folder : file.replace(/\.md$/, '')
}
