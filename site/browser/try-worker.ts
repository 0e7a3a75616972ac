// The first worker of the page that tries a change: it reads, plans, draws and checks, so that the page never waits.
import type {Problem} from '../../plugins/build-file/problem.ts'
import {keysOf} from '../try/fields.ts'
import {type HandleName, moved} from '../try/handles.ts'
import {fetchLater} from '../try/later.ts'
import {
  type Around,
  lookAgain,
  mendIn,
  openSession,
  type Session,
  setIn,
  shownText,
  startAgain,
  writeIn,
} from '../try/session.ts'
import {type View, viewOf} from '../try/view.ts'

/** What the page asks of its worker. */
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

/** What it answers: how all stands, or how this program failed. `isMore`: nobody asked. */
export type Answers = {isMore: boolean} & (Shows | {failed: string})

export interface Shows {
  view: View
  /** Which values could not be set. */
  unset: string[]
  /** What would not work is known. */
  isChecked: boolean
  /** Once a build is opened: all values that there can be. */
  keys: string[] | undefined
}

let session: Session | undefined
let wanted: readonly (readonly [path: string, text: string])[] = []
let later: 'not asked for' | 'on its way' | 'here' = 'not asked for'

function done(asks: Asks, before: Session): Session {
  if (asks.ask === 'set') return setIn(before, [[asks.path, asks.text]])
  if (asks.ask === 'move') return setIn(before, moved(asks.name, asks.mm, before.now))
  if (asks.ask === 'write') return writeIn(before, asks.text)
  if (asks.ask === 'field') return {...before, asked: [...before.asked, asks.path]}
  if (asks.ask === 'again') return startAgain(before)
  // A problem of an older text has another place by now.
  const isOfNow = asks.ask === 'mend' && asks.text === before.now.text
  return isOfNow ? mendIn(before, asks.problem, asks.way) : before
}

function opened({text, slug, around, changes}: Extract<Asks, {ask: 'open'}>): Session {
  const bare = openSession(text, slug, around)
  return changes.length > 0 ? setIn(bare, changes) : bare
}

/** Do what is wanted of the session, and show it. */
function show(work: () => Session | undefined, isMore: boolean, isOpened = false): void {
  const post = (answers: Answers) => postMessage(answers)
  try {
    session = work()
    if (!session) return
    const {now} = session
    const unset = wanted.flatMap(([path, text]) => (shownText(now, path) === text ? [] : [path]))
    const keys = isOpened ? keysOf(now.build) : undefined
    post({isMore, view: viewOf(session), unset, isChecked: later === 'here', keys})
  } catch (error) {
    post({isMore, failed: (error as Error).message})
  }
}

addEventListener('message', ({data}: MessageEvent<Asks>) => {
  if (data.ask === 'open') {
    wanted = data.changes
    show(() => opened(data), false, true)
  } else if (session) {
    const before = session
    show(() => {
      const after = done(data, before)
      wanted = [...after.changes]
      return after
    }, false)
  }
  if (later === 'not asked for') void look()
})

/** Look at the text once more, with what comes a moment later. */
async function look(): Promise<void> {
  later = 'on its way'
  try {
    await fetchLater()
    later = 'here'
    show(() => session && lookAgain(session), true)
  } catch {
    later = 'not asked for'
  }
}
