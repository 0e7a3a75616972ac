import {differenceOf} from './difference.ts'
import {newBuildPath, type WrittenAnswer} from './new-build-path.ts'
import {slugOf} from './page-take.ts'
import type {View} from './view.ts'

interface Tried {
  current: () => View | undefined
  /** Gives the text of a new build of that name. */
  newText: (name: string) => Promise<string>
}

/** While the journal is served from this machine: let what was tried become a build of it, after a look. */
export function offerToWrite(page: HTMLElement, {current, newText}: Tried): void {
  const find = <E extends HTMLElement>(name: string) => page.querySelector<E>(`[data-part=${name}]`)
  const [name, list] = [find<HTMLInputElement>('name'), find('difference')]
  const [write, told] = [find<HTMLButtonElement>('written-button'), find('written')]
  if (!name || !list || !write || !told) return
  let text = ''
  /** What was looked at. */
  let looked = ''
  tell(told, lastWritten())

  find('differ')?.addEventListener('click', async () => {
    const view = current()
    if (!view) return
    name.value ||= `${view.title}, changed`
    looked = view.text
    text = await newText(name.value)
    list.replaceChildren(
      ...differenceOf(view.startText, text).map(({is, line}) => {
        const item = document.createElement('li')
        item.className = is
        const code = document.createElement('code')
        code.textContent = line
        item.append({gone: 'out: ', new: 'in: ', under: ''}[is], code)
        return item
      }),
    )
    list.hidden = false
    write.hidden = false
    write.textContent = `Write builds/${slugOf(name.value)}.md`
    told.textContent = ''
  })
  name.addEventListener('input', () => {
    list.hidden = true
    write.hidden = true
  })
  write.addEventListener('click', async () => {
    write.hidden = true
    if (current()?.text === looked) tell(told, await written(slugOf(name.value), text))
    else told.textContent = 'Something was changed since; look at the difference again.'
  })
}

/** Say what came of it, with a way to the page that it names. */
function tell(box: HTMLElement, says: string): void {
  const [before, address, after = ''] = says.split(/(\/builds\/[a-z0-9-]+\/)/)
  box.replaceChildren(before!)
  if (!address) return
  const link = document.createElement('a')
  link.href = address
  link.textContent = address
  box.append(link, after)
}

const keptMs = 30_000

/** The page is loaded anew, once or twice, when the journal has another build: what was said is said again then. */
function lastWritten(): string {
  try {
    const [, ms, says = ''] = /^(\d+) (.*)$/s.exec(sessionStorage.getItem('written') ?? '') ?? []
    return Date.now() - Number(ms) < keptMs ? says : ''
  } catch {
    return ''
  }
}

function keepWritten(says: string): void {
  try {
    sessionStorage.setItem('written', `${Date.now()} ${says}`)
  } catch {
    // Without storage it is said once.
  }
}

async function written(slug: string, text: string): Promise<string> {
  try {
    const token = await (await fetch(newBuildPath)).text()
    const headers = {'Content-Type': 'application/json', 'X-Token': token}
    const answer = await fetch(newBuildPath, {method: 'POST', headers, body: JSON.stringify({slug, text})})
    const {says} = (await answer.json()) as WrittenAnswer
    keepWritten(says)
    return says
  } catch {
    return 'It could not be written: npm start answers no more.'
  }
}
