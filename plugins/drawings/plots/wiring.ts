import type {Element} from 'hast'
import {element} from '../writers/svg.ts'
import {plot, word} from './plot.ts'

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
  const parts =
    kind === 'piezo'
      ? [
          part(62, 72, 'circle', {r: '42'}),
          part(62, 72, 'circle', {r: '27'}),
          dot(62, 72),
          dot(92, 104),
          word(62, 14, 'disc', 'middle'),
          wire(`M62 72L112 ${live}L${jackX} ${live}`),
          wire(`M92 104L${jackX} ${ground}`, '7 4'),
          word(226, live - 12, 'live, from the middle', 'middle'),
          word(226, ground + 14, 'ground, from the brass rim', 'middle'),
        ]
      : [
          part(8, live - 14, 'rect', {width: '88', height: String(ground - live + 28)}),
          word(52, (live + ground) / 2, kind === 'magnetic' ? 'coil' : 'microphone', 'middle'),
          wire(`M96 ${live}L${jackX} ${live}`),
          wire(`M96 ${ground}L${jackX} ${ground}`, '7 4'),
          word(200, live - 12, 'live', 'middle'),
          word(200, ground - 12, 'ground', 'middle'),
          ...(kind === 'magnetic' ? stringsGround() : []),
        ]
  return plot({id, title: 'Wiring', says, width: 460, height: kind === 'magnetic' ? 174 : 138}, [
    ...parts,
    ...jack(),
  ])
}

function stringsGround(): Element[] {
  return [
    part(8, ground + 32, 'rect', {width: '88', height: '26'}),
    word(52, ground + 45, 'strings', 'middle'),
    wire(`M96 ${ground + 45}L310 ${ground + 45}L310 ${ground}`, '7 4'),
    dot(310, ground),
    word(206, ground + 59, 'from the bridge or the anchors', 'middle'),
  ]
}

function part(x: number, y: number, shape: 'circle' | 'rect', sizes: Record<string, string>): Element {
  const place = shape === 'circle' ? {cx: String(x), cy: String(y)} : {x: String(x), y: String(y)}
  return element(shape, {...place, ...sizes, fill: 'currentColor', fillOpacity: '0.1'})
}

function dot(x: number, y: number): Element {
  return element('circle', {cx: String(x), cy: String(y), r: '3', fill: 'currentColor'})
}

function wire(d: string, dashes?: string): Element {
  return element('path', {
    className: ['plot-wire'],
    d,
    strokeWidth: '1.6',
    ...(dashes && {strokeDasharray: dashes}),
  })
}

function jack(): Element[] {
  return [
    part(jackX, live - 18, 'rect', {width: '62', height: String(ground - live + 36)}),
    dot(jackX, live),
    dot(jackX, ground),
    word(jackX + 10, live, 'tip'),
    word(jackX + 10, ground, 'sleeve'),
    word(jackX + 72, (live + ground) / 2, 'jack'),
  ]
}
