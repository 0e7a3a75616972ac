import type {HeardNote} from '../../plugins/sound/notes.ts'
import {pluck} from '../../plugins/sound/pluck.ts'
import type {View} from './view.ts'

const seconds = 2.5

/** Let a string be heard as it is meant and as it is made: once somebody asks, and quietly. */
export function offerSound(page: HTMLElement, current: () => View | undefined): void {
  const part = <E extends HTMLElement>(name: string) => page.querySelector<E>(`[data-part=${name}]`)!
  const [string, line] = [part<HTMLSelectElement>('string'), part<HTMLSelectElement>('line')]
  let context: AudioContext | undefined
  let playing: AudioBufferSourceNode | undefined

  const hear = (way: 'meant' | 'marked' | 'setBack') => () => {
    const note = current()?.heard[Number(string.value)]?.notes[Number(line.value)]
    if (!note) return
    const cents = way === 'meant' ? 0 : note[`${way}Cents`]
    const name = `${string.selectedOptions[0]?.text}, ${line.selectedOptions[0]?.text}`
    part('heard').textContent = cents === undefined ? `${name}: nothing to be off` : `${name}: ${off(cents)}`
    context ??= new AudioContext()
    void context.resume()
    playing?.stop()
    playing = play(context, note, cents ?? 0)
  }
  part('hear-meant').addEventListener('click', hear('meant'))
  part('hear-marked').addEventListener('click', hear('marked'))
  part('hear-set-back').addEventListener('click', hear('setBack'))
}

const off = (cents: number) =>
  Math.abs(cents) < 0.5 ? 'in tune' : `${Math.round(Math.abs(cents))} cents ${cents > 0 ? 'sharp' : 'flat'}`

function play(
  context: AudioContext,
  {frequencyHz, inharmonicity}: HeardNote,
  cents: number,
): AudioBufferSourceNode {
  const sounding = {frequencyHz: frequencyHz * 2 ** (cents / 1200), inharmonicity}
  const samples = pluck(sounding, context.sampleRate, seconds)
  const buffer = context.createBuffer(1, samples.length, context.sampleRate)
  buffer.copyToChannel(samples, 0)
  const source = new AudioBufferSourceNode(context, {buffer})
  source.connect(context.destination)
  source.start()
  return source
}

/** Show which strings and lines can be heard; what is chosen stays chosen. */
export function showSound(page: HTMLElement, {heard, isFretted}: View): void {
  const part = <E extends HTMLElement>(name: string) => page.querySelector<E>(`[data-part=${name}]`)!
  part('sound').hidden = heard.length === 0
  part('hear-set-back').hidden = !isFretted
  fill(
    part<HTMLSelectElement>('string'),
    heard.map(({name}) => name),
  )
  const labels = heard[0]?.notes.map(({label}) => (label === '0' ? 'open' : `line ${label}`)) ?? []
  fill(part<HTMLSelectElement>('line'), labels, worstOf(heard[0]))
}

/** What is first offered is the note that is most off as marked. */
function worstOf(string: View['heard'][number] | undefined): number {
  const off = (string?.notes ?? []).map(({markedCents = 0}) => Math.abs(markedCents))
  return Math.max(0, off.indexOf(Math.max(...off)))
}

function fill(select: HTMLSelectElement, names: readonly string[], first = 0): void {
  if (select.dataset.names === names.join()) return
  const value = select.options.length > 0 ? select.value : String(first)
  select.dataset.names = names.join()
  select.replaceChildren(...names.map((name, at) => new Option(name, String(at))))
  select.value = Number(value) < names.length ? value : '0'
  if (select.selectedIndex < 0) select.selectedIndex = 0
}
