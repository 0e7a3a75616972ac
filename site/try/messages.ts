import type {Problem} from '../../plugins/build-file/schema/problem.ts'
import type {HandleName} from './handles.ts'
import type {MakingView} from './making.ts'
import type {Around} from './session.ts'
import type {Drawn, View} from './view.ts'

/** What the page asks of its first worker. */
export type Asks =
  | {
      ask: 'open'
      text: string
      slug: string
      around: Around
      changes: readonly (readonly [path: string, text: string])[]
    }
  | {ask: 'set'; path: string; text: string}
  | {ask: 'move'; name: HandleName; mm: number}
  | {ask: 'write'; text: string}
  /** What a problem of the text proposes. */
  | {ask: 'mend'; text: string; problem: Problem; way: number}
  | {ask: 'again'}
  /** A field for another value. */
  | {ask: 'field'; path: string}

/** What it answers: what is drawn, and then how all stands. */
export type Answers = {drawn: Drawn} | Shows | Fails

export interface Shows {
  /** Nobody asked. */
  isMore: boolean
  view: View
  /** Which values could not be set. */
  unset: string[]
  /** What would not work is known. */
  isChecked: boolean
  /** Once a build is opened: all values that there can be. */
  keys: string[] | undefined
}

/** How the program failed at a text; or that a part of it could not be fetched, which takes another worker. */
type Fails = {failed: string; isMore: boolean} | {unfetched: true}

/** What the page asks of its second worker, of a text that started as another one. */
export interface AsksMaking {
  ask: 'making' | 'plan' | 'journal'
  text: string
  start: string
  slug: string
  around: Around
  /** The title of a new build. */
  name: string
}

/** What it answers: how the making stands; the plan as JSON; the text of a new build; how this program failed. */
export type Made = {making: MakingView} | {plan: string} | {journal: string} | {failed: string}

export type AnswersMaking = Made | {unfetched: true}
