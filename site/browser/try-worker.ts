// The first worker of the page that tries a change: it reads, plans, draws and checks, so that the page never waits.
// What is drawn is told at once, all else after it.
import {keysOf} from '../try/fields.ts'
import {moved} from '../try/handles.ts'
import {fetchChecks, fetchHealing} from '../try/later.ts'
import type {Answers, Asks} from '../try/messages.ts'
import {
  lookAgain,
  mendIn,
  openSession,
  type Session,
  setIn,
  shownText,
  startAgain,
  writeIn,
} from '../try/session.ts'
import {drawnOf, viewOf} from '../try/view.ts'

let session: Session | undefined
let wanted: readonly (readonly [path: string, text: string])[] = []
const later = {isFetching: false, checks: false, healing: false}

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
  try {
    session = work()
    if (!session) return
    const {now} = session
    const drawn = drawnOf(session)
    post({drawn})
    const unset = wanted.flatMap(([path, text]) => (shownText(now, path) === text ? [] : [path]))
    const keys = isOpened ? keysOf(now.build) : undefined
    post({isMore, view: viewOf(session, drawn), unset, isChecked: later.checks && !lacksHealing(), keys})
  } catch (error) {
    post({isMore, failed: (error as Error).message})
  }
}

const post = (answers: Answers) => postMessage(answers)

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
  void look()
})

/** There is a slip, and nobody knows what was meant. */
const lacksHealing = (): boolean =>
  !later.healing &&
  [session?.start, session?.base, session?.now].some((one) => one !== undefined && one.unread.length > 0)

/** Look at the text once more, with what comes a moment later. */
async function look(): Promise<void> {
  if (later.isFetching || (later.checks && !lacksHealing())) return
  later.isFetching = true
  try {
    if (!later.checks) await fetchChecks()
    later.checks = true
    if (lacksHealing()) {
      await fetchHealing()
      later.healing = true
    }
  } catch {
    post({unfetched: true})
    return
  }
  later.isFetching = false
  show(() => session && lookAgain(session), true)
  void look()
}
