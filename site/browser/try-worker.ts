// The worker of the page that tries a change: it reads, plans, checks and draws, so that the page never waits.
import {planJson} from '../../plugins/words/printed-plan.ts'
import {type HandleName, moved} from '../try/handles.ts'
import {
  type Around,
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
  | {ask: 'mend'; at: number; way: number}
  | {ask: 'again'}
  | {ask: 'plan'}

/** What it answers: how all stands, and which values could not be set; the plan as JSON; or how this program failed. */
export type Answers = {view: View; unset: string[]} | {plan: string} | {failed: string}

let session: Session | undefined

function done(asks: Asks): Session | undefined {
  if (asks.ask === 'open') {
    const opened = openSession(asks.text, asks.slug, asks.around)
    return asks.changes.length > 0 ? setIn(opened, asks.changes) : opened
  }
  if (!session) return undefined
  if (asks.ask === 'set') return setIn(session, [[asks.path, asks.text]])
  if (asks.ask === 'move') return setIn(session, moved(asks.name, asks.mm, session.now.plan))
  if (asks.ask === 'write') return writeIn(session, asks.text)
  if (asks.ask === 'mend') return mendIn(session, asks.at, asks.way)
  return startAgain(session)
}

addEventListener('message', ({data}: MessageEvent<Asks>) => {
  const answer = (answers: Answers) => postMessage(answers)
  try {
    if (data.ask === 'plan' && session) {
      answer({plan: planJson(session.now.plan, session.now.problems)})
      return
    }
    session = done(data)
    if (!session) return
    const {now, changes} = session
    const wanted = data.ask === 'open' ? data.changes : [...changes]
    const unset = wanted.flatMap(([path, text]) => (shownText(now, path) === text ? [] : [path]))
    answer({view: viewOf(session), unset})
  } catch (error) {
    answer({failed: (error as Error).message})
  }
})
