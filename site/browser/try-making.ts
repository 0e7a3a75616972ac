// The second worker of the page that tries a change: what making the instrument takes, its cut list first of all.
import {fetchChecks, fetchHealing} from '../try/later.ts'
import {makingView, newBuildOf, wholeOf} from '../try/making.ts'
import type {AnswersMaking, AsksMaking} from '../try/messages.ts'
import {look, type Reading} from '../try/session.ts'

let start: Reading | undefined
let checks: Promise<void> | undefined
let healing: Promise<void> | undefined

const unfetched = new Error()
const fetched = <T>(part: Promise<T>): Promise<T> =>
  part.catch(() => {
    throw unfetched
  })

/** Read a text, with what its slips were meant to be where it has any. */
async function readingOf(...given: Parameters<typeof look>): Promise<Reading> {
  const reading = look(...given)
  if (healing || reading.unread.length === 0) return reading
  healing = fetched(fetchHealing())
  await healing
  return look(...given)
}

async function answerOf({ask, text, name, ...given}: AsksMaking): Promise<AnswersMaking> {
  checks ??= fetched(fetchChecks())
  await checks
  const now = await readingOf(text, given, text !== given.start)
  if (ask === 'journal') return {journal: newBuildOf(now, name, given.slug)}
  const {context} = given.around
  const whole = wholeOf(now, context)
  if (ask === 'plan') {
    const {planJson} = await fetched(import('../try/later-json.ts'))
    return {plan: planJson(whole.plan, whole.problems)}
  }
  if (start?.text !== given.start)
    start = text === given.start ? whole : wholeOf(await readingOf(given.start, given), context)
  return {making: makingView(start, now, whole)}
}

addEventListener('message', async ({data}: MessageEvent<AsksMaking>) => {
  const answer = await answerOf(data).catch(
    (error: Error): AnswersMaking => (error === unfetched ? {unfetched: true} : {failed: error.message}),
  )
  postMessage(answer)
})
