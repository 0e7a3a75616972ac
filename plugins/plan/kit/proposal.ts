import type {Texts} from './proposal-texts.ts'

/** Why something is proposed as it is; the words are in the words room. */
export type ProposedWhy =
  | 'anchors behind the box'
  | 'anchors over the end'
  | 'anchors on the wall'
  | 'blocks under the neck'
  | 'block behind the end'
  | 'screws into the neck'
  | 'blocks in the corners'
  | 'screws round the top'
  | 'screws into the end'
  | 'hole by the air'
  | 'nut filed to height'
  | 'rod for the height'
  | 'posts in two rows'
  | 'posts in one row'
  | 'strings held down'
  | 'head as thick as tuners fit'

/** Why nothing is proposed. */
export type OpenWhy =
  | 'no room for anchors'
  | 'no room behind the bridge'
  | 'no room for blocks'
  | 'no screw holds'
  | 'no room for the top’s screws'
  | 'pull not known'
  | 'no notes'
  | 'no room for a hole'
  | 'no room for posts'
  | 'head does not fit tuners'
  | 'strings do not reach'
  | 'push bows the neck'
  | 'push sinks the top'

/** Values for what the file leaves open, as it would have them, or why there are none. */
export type Proposal = {
  /** The key of the build file that they stand under. */
  key: string
} & ({texts: {readonly [key: string]: Texts}; why: ProposedWhy} | {open: OpenWhy})
