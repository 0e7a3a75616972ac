import type {FileTrouble} from '../schema/build.ts'
import type {Severity} from '../schema/problem.ts'

/**
 * A build that shows what a rule is about: lines of front matter, to which a test adds a title and the usual scale,
 * strings, neck and box where they are left out; or a whole file, from its first line on.
 */
export type FileExample =
  | string
  | {
      text: string
      /** The files of its folder. */
      files?: readonly string[]
      /** The other builds of its journal. */
      builds?: readonly {slug: string; basedOn?: string}[]
      /** Those of its files that cannot be shown or published. */
      troubles?: readonly FileTrouble[]
      /** The pieces on the rack. */
      rack?: string
      /** Files of other builds that look at the rack. */
      others?: readonly string[]
    }

/** An example that is one build file, or a whole journal: each of its files by its path. */
export type Example = FileExample | {journal: Readonly<Record<string, string>>}

/** What a rule says of itself. `severity` is the usual one; what it finds may be milder where it says so. */
export interface RuleText {
  severity: Severity
  /** Of the file or the journal, not of the design: stays as grave once the instrument exists. */
  about?: 'file' | 'journal'
  what: string
  why: string
  mend: string
  passes?: Example
  fails?: Example
  /** Why no file shows it, where none does. */
  unshown?: string
}
