import type {Element} from 'hast'
import {s} from 'hastscript'
import {plotTitles, wiringWords as words} from '../../words/drawings/plots.ts'
import {type Place, plot, word} from './plot.ts'

const live = 40
const ground = 104
const jackX = 340

interface Wiring {
  id: string
  kind: 'piezo' | 'magnetic' | 'microphone'
  says: string
}

/**
 * Draw pickup, jack and the wires between them, not to scale: the live wire to the tip, the ground wire to the sleeve,
 * and from a coil the strings' ground besides. Wires are told apart by their words and by dashes.
 */
export function wiringDrawing({id, kind, says}: Wiring): Element {
  const height = kind === 'magnetic' ? 174 : 138
  const pickup = kind === 'piezo' ? disc() : twoWires(kind)
  return plot({id, title: plotTitles.wiring, says}, {width: 460, height}, [
    ...pickup,
    ...(kind === 'magnetic' ? stringsGround() : []),
    ...jack(),
  ])
}

const disc = (): Element[] => [
  ring([62, 72], 42),
  ring([62, 72], 27),
  dot([62, 72]),
  dot([92, 104]),
  word(words.piezo, [62, 14], 'middle'),
  wire(`M62 72L112 ${live}L${jackX} ${live}`),
  wire(`M92 104L${jackX} ${ground}`, '7 4'),
  word(words.discLive, [226, live - 12], 'middle'),
  word(words.discGround, [226, ground + 14], 'middle'),
]

const twoWires = (kind: 'magnetic' | 'microphone'): Element[] => [
  block([8, live - 14], 88, ground - live + 28),
  word(words[kind], [52, (live + ground) / 2], 'middle'),
  wire(`M96 ${live}L${jackX} ${live}`),
  wire(`M96 ${ground}L${jackX} ${ground}`, '7 4'),
  word(words.live, [200, live - 12], 'middle'),
  word(words.ground, [200, ground - 12], 'middle'),
]

const stringsGround = (): Element[] => [
  block([8, ground + 32], 88, 26),
  word(words.strings, [52, ground + 45], 'middle'),
  wire(`M96 ${ground + 45}L310 ${ground + 45}L310 ${ground}`, '7 4'),
  dot([310, ground]),
  word(words.stringsGround, [206, ground + 59], 'middle'),
]

const jack = (): Element[] => [
  block([jackX, live - 18], 62, ground - live + 36),
  dot([jackX, live]),
  dot([jackX, ground]),
  word(words.tip, [jackX + 10, live]),
  word(words.sleeve, [jackX + 10, ground]),
  word(words.jack, [jackX + 72, (live + ground) / 2]),
]

const tint = {fill: 'currentColor', fillOpacity: '0.1'}

const ring = ([cx, cy]: Place, r: number): Element => s('circle', {cx, cy, r, ...tint})

const block = ([x, y]: Place, width: number, height: number): Element =>
  s('rect', {x, y, width, height, ...tint})

const dot = ([cx, cy]: Place): Element => s('circle', {cx, cy, r: 3, fill: 'currentColor'})

const wire = (d: string, dashes?: string): Element =>
  s('path', {className: ['plot-wire'], d, strokeWidth: '1.6', strokeDashArray: dashes})
