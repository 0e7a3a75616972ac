// The second worker of the page that tries a change: what making the instrument takes, its cut list first of all.
import {planJson} from '../../plugins/words/printed-plan.ts'
import {fetchLater} from '../try/later.ts'
import {type MakingView, makingView, newBuildOf, wholeOf} from '../try/making.ts'
import {type Around, look, type Reading} from '../try/session.ts'

/** What the page asks of it, of a text that started as another one. */
export interface AsksMaking {
  ask: 'making' | 'plan' | 'journal'
  text: string
  start: string
  slug: string
  around: Around
  /** The title of a new build. */
  name: string
}

/** What it answers: how the making stands; the plan as JSON; the text of a new build; or how this program failed. */
export type AnswersMaking = {making: MakingView} | {plan: string} | {journal: string} | {failed: string}

let start: Reading | undefined
const isReady = fetchLater()

async function answerOf({ask, text, name, ...given}: AsksMaking): Promise<AnswersMaking> {
  await isReady
  const now = look(text, given, text !== given.start)
  if (ask === 'journal') return {journal: newBuildOf(now, name, given.slug)}
  const {context} = given.around
  const whole = wholeOf(now, context)
  if (ask === 'plan') return {plan: planJson(whole.plan, whole.problems)}
  if (start?.text !== given.start)
    start = text === given.start ? whole : wholeOf(look(given.start, given), context)
  return {making: makingView(start, now, whole)}
}

addEventListener('message', async ({data}: MessageEvent<AsksMaking>) => {
  const answer = await answerOf(data).catch((error: Error): AnswersMaking => ({failed: error.message}))
  postMessage(answer)
})
