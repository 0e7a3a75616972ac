import type {YAMLError} from 'yaml'
import type {Kind, RecordOf} from '../schema/kinds.ts'
import {type Rewriting, rewritings, withoutTabs} from './line-slips.ts'
import {type Setting, shapeWeight, slipOf, suspects, type Way, weigh} from './weigh-lines.ts'

/** Lines of the YAML that are read as others: what stands there, and what would do, the likeliest first. */
export interface Rewritten {
  /** The first line and the one after the last, from 0. */
  from: number
  to: number
  ways: string[][]
  isSure: boolean
  /** What the parser said of the lines as they stand. */
  slip: YAMLError
}

/** A text of YAML that can be read, with what had to be rewritten for it. */
export interface Healed {
  text: string
  changes: Rewritten[]
}

/** More lines and signs than these of one key are not searched for what was meant. */
const mostLines = 80

const mostSigns = 6000

/** How many readings of one key are tried. */
const mostTries = 300

/** More keys than these are not searched: nobody reads what they were meant to be. */
const mostSearched = 50

/** A key of so many lines is searched everywhere at every slip. */
const mostUnblamed = 8

const mostSlips = 4

const beam = 4

const mostWays = 4

/**
 * Rewrite what keeps a text from being YAML, key by key of the first level, so that the rest of the file can be read.
 * Of all rewritings that the schema can read, the nearest to what was typed is taken. Undefined where none is found.
 */
export function healYaml(text: string, schema: RecordOf, units: 'in' | 'mm'): Healed | undefined {
  const lines = text.split('\n')
  if (lines.some((line) => /^(?:---|\.\.\.)(?:\s|$)/.test(line))) return undefined
  const known = {keys: keysOf(schema), shortOf: (key: string) => shortOf(schema.fields[key])}
  const healed: string[] = []
  const changes: Rewritten[] = []
  let searched = 0
  for (const [from, to] of keysIn(lines)) {
    const own = lines.slice(from, to)
    const slip = slipOf(own)
    if (!slip) {
      healed.push(...own)
      continue
    }
    const ways = searched++ < mostSearched ? search(own, {schema, units, known}) : []
    if (ways.length === 0) {
      // What cannot be read is passed over, so that the rest is.
      const at = own.join('\n').slice(0, slip.pos[0]).split('\n').length - 1
      changes.push({from: from + Math.min(at, own.length - 1), to, ways: [], isSure: false, slip})
      healed.push(...own.map(() => '#'))
      continue
    }
    const best = ways[0]!
    const start = own.findIndex((line, at) => line !== best.lines[at])
    const extra = best.lines.length - own.length
    const end = own.findLastIndex((line, at) => line !== best.lines[at + extra]) + 1
    // The same lines must hold every way.
    const isAlike = ({lines: each}: Way) =>
      each.length === best.lines.length &&
      own.every((line, at) => (at >= start && at < end) || line === each[at < start ? at : at + extra])
    const told = ways.filter(isAlike)
    changes.push({
      from: from + start,
      to: from + Math.max(end, start + 1),
      ways: told.map(({lines: each}) => each.slice(start, Math.max(end, start + 1) + extra)),
      isSure: best.isSure,
      slip,
    })
    healed.push(...best.lines)
  }
  return changes.length > 0 ? {text: healed.join('\n'), changes} : undefined
}

/** The stretches of lines of the keys of the first level. */
function keysIn(lines: readonly string[]): [number, number][] {
  let open = 0
  const starts = lines.flatMap((line, at) => {
    const starts = at === 0 || /^[^\s#\-\]})]/.test(line)
    const own = depthOf(line)
    // A line that closes what stands open above it belongs there.
    const goesOn = starts && open > 0 && own < 0
    open = starts && !goesOn ? own : open + own
    return starts && !goesOn ? [at] : []
  })
  return starts.map((start, i) => [start, starts[i + 1] ?? lines.length])
}

/** How many brackets more a line opens than it closes. */
const depthOf = (line: string): number =>
  (line.match(/[[{]/g)?.length ?? 0) - (line.match(/[\]}]/g)?.length ?? 0)

function keysOf(schema: RecordOf): Set<string> {
  const keys = new Set<string>()
  const walk = (kind: Kind): void => {
    if (kind.is === 'list') walk(kind.item)
    else if (kind.is === 'either') [kind.first, kind.second].forEach(walk)
    else if (kind.is === 'record')
      for (const [key, field] of Object.entries(kind.fields)) {
        keys.add(key)
        walk(field)
      }
  }
  walk(schema)
  return keys
}

const shortOf = (kind: Kind | undefined): readonly string[] =>
  kind?.is === 'record' ? (kind.short?.keys ?? []) : []

/** Find the nearest rewritings of a key's lines that can be read; those that explain the same as well come first. */
function search(lines: readonly string[], setting: Setting): Way[] {
  if (lines.length > mostLines || lines.join('\n').length > mostSigns) return []
  const seen = new Set([lines.join('\n')])
  const written = withoutTabs(lines)
  let states: Way[] = [weigh({lines: written, reach: 0}, setting)]
  if (states[0]!.reads === Number.POSITIVE_INFINITY) return asked(states, lines)
  let tries = 0
  let good: Way[] = []
  for (let slips = 1; slips <= mostSlips && states.length > 0; slips += 1) {
    const next: Way[] = []
    let farthest = 3
    for (const one of nearestOf(states, blamed(good, written), setting)) {
      // What goes further than one that is wrong in nothing is never taken.
      if (one.reach > farthest) break
      const text = one.lines.join('\n')
      if (seen.has(text) || tries >= mostTries) continue
      seen.add(text)
      tries += 1
      const way = weigh(one, setting)
      next.push(way)
      if (way.reads === Number.POSITIVE_INFINITY && way.wrong === 0) farthest = one.reach
    }
    const ordered = next.sort((a, b) => b.reads - a.reads || nearestFirst(a, b))
    good = [...good, ...ordered.filter(({reads}) => reads === Number.POSITIVE_INFINITY)].sort(nearestFirst)
    // A line left out is for want of anything else, and so is a text where keys belong.
    const isGood = good.some(({reach, wrong}) => reach < 3 && wrong < shapeWeight)
    if (isGood) break
    states = ordered.filter(({reach, reads}) => reach < 3 && reads < Number.POSITIVE_INFINITY).slice(0, beam)
  }
  return asked(good, lines)
}

/** In a long key, the lines without any of which the rest can be read: slips lie there. */
const blamed = (good: readonly Way[], written: readonly string[]): number[] =>
  good.flatMap((way) =>
    written.length > mostUnblamed && way.reach === 3 && way.wrong < shapeWeight
      ? [way.lines.findIndex((line, at) => line !== written[at])]
      : [],
  )

/** Every rewriting of some states by one slip more, in some lines or wherever it may lie, in the order of their reach. */
const nearestOf = (states: readonly Way[], only: readonly number[], {known}: Setting): Rewriting[] =>
  states
    .flatMap((state) =>
      (only.length > 0 ? only : suspects(state)).flatMap((at) =>
        [...rewritings(state.lines, at, known)].map((one): Rewriting => {
          return {...one, reach: Math.max(one.reach, state.reach) as Rewriting['reach']}
        }),
      ),
    )
    .sort((a, b) => a.reach - b.reach)

const nearestFirst = (a: Way, b: Way): number =>
  isLeftOut(a) - isLeftOut(b) || a.wrong - b.wrong || a.reach - b.reach

const isLeftOut = ({reach}: Way): number => (reach === 3 ? 1 : 0)

/**
 * Of the ways that are wrong in the least, keep one for each meaning; one meaning at the nearest reach is certain,
 * unless a text gains or loses a comma by it.
 */
function asked(good: readonly Way[], written: readonly string[]): Way[] {
  const [best] = good
  if (!best) return []
  const equal = good.filter(({wrong, reach}) => wrong === best.wrong && reach === best.reach)
  const byMeaning = new Map(equal.toReversed().map((way) => [way.meaning, way]))
  const ways = [...byMeaning.values()].toReversed().slice(0, mostWays)
  return ways.map((way) => ({
    ...way,
    isSure: ways.length === 1 && best.reach < 3 && keepsCommas(way, written.join('\n')),
  }))
}

/** Whether the texts that are read have the commas with which they were written. */
function keepsCommas({texts}: Way, written: string): boolean {
  const bare = (text: string) => text.replace(/[\s"'“”‘’\\]/g, '')
  const loose = (text: string) => bare(text).replace(/[,;]/g, '')
  return texts.every((text) => bare(written).includes(bare(text)) || !loose(written).includes(loose(text)))
}
