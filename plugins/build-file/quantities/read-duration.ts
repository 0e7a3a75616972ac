import {units} from '../../tables/units.ts'
import {findUnit} from './find-unit.ts'
import {plainText} from './plain-text.ts'
import {misreading, quoted, type Reading, reading} from './reading.ts'
import {takeFigure} from './take-figure.ts'

/** Read a stretch of time in minutes: `1 h 30 min`, `90 min`, `1.5 h`. */
export function readDuration(text: string): Reading<number> {
  const wrong = (why: string, likely: string[] = []) =>
    misreading('unreadable-duration', `${quoted(text)} is not a length of time${why}`, likely)
  const [, hours, minutes] = /^(\d+) ?[:h] ?(\d\d)$/.exec(plainText(text)) ?? []
  if (hours !== undefined)
    return wrong(': its minutes need their unit', [`${hours} h ${Number(minutes)} min`])
  let rest = plainText(text)
  let total = 0
  let larger = Number.POSITIVE_INFINITY
  while (rest !== '' || larger === Number.POSITIVE_INFINITY) {
    const taken = takeFigure(rest)
    if (!taken) return wrong(', as 1 h 30 min is')
    const [, word = '', after = ''] = /^([a-z]*)\.?(?: ?)(.*)$/i.exec(taken.rest) ?? []
    const unit = findUnit(word, units.duration)
    if (!unit)
      return wrong(
        ': it needs hours (h) or minutes (min)',
        word === '' && after === '' ? [`${taken.written} min`, `${taken.written} h`] : [],
      )
    if (unit.times[0] >= larger) return wrong(': hours come first and minutes after them, each once')
    larger = unit.times[0]
    total += (taken.figure.n * unit.times[0]) / taken.figure.d
    rest = after
  }
  return Number.isFinite(total) ? reading(total) : wrong(': it is too long')
}
