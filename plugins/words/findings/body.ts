import {whatWouldDo} from '../../build-file/quantities/reading.ts'
import type {Wording} from './wording.ts'

/** `likely` is what is meant, as it is written in the body. */
export function unknownDirective({
  kind,
  word,
  likely,
  names,
}: {
  kind: 'section' | 'view'
  word: string
  likely: string | undefined
  names: readonly string[]
}): Wording {
  const message = `there is no ${kind} “${word}”`
  return likely
    ? {message: `${message}; ${likely} would do`, expected: [likely]}
    : {message, note: `There are ${names.slice(0, -1).join(', ')} and ${names.at(-1)}.`}
}

export function directiveTwice({name, firstLine}: {name: string; firstLine: number}): Wording {
  return {message: `::${name} stands in line ${firstLine} already; this second one is left out`}
}

export function cautionsLeftOut(): Wording {
  return {message: 'cautions cannot be left out; they stay on the page'}
}

export function unknownValue({path, meant}: {path: string; meant: () => readonly string[]}): Wording {
  const likely = meant()
  const isLike = likely.length > 0
  return {
    message: `there is no value “${path}”${isLike ? `; ${likely.join(', ')} would do` : ''}`,
    expected: isLike ? likely.map((one) => `:value[${one}]`) : undefined,
  }
}

export function unknownStep({name, likely}: {name: string; likely: string | undefined}): Wording {
  return {
    message: `no step of this build is called “${name}”${likely ? `; ${likely} would do` : ''}`,
    expected: likely ? [`:step[${likely}]`] : undefined,
  }
}

export function openValue({path, needs}: {path: string; needs: string | undefined}): Wording {
  return {
    message: `“${path}” is not known yet, and reads “open” on the page${needs ? `; it needs ${needs}` : ''}`,
  }
}

export function nestedTooDeep(): Wording {
  return {message: 'the prose is nested too deep here to be read; close what stays open before it'}
}

const excesses = {
  cells: 'ten thousand cells of tables',
  definitions: 'five hundred definitions of links and notes',
  depth: 'a hundred thousand steps of lists and quotations within each other, line by line',
  headings: 'a thousand headings',
  items: 'five thousand items of lists',
  lines: 'twenty thousand lines',
  paragraph: 'ten thousand lines of one paragraph, without an empty line',
  references: 'half a million letters of addresses that references repeat',
  signs: 'twenty thousand signs of Markdown and HTML',
}

export function tooMuchProse({of}: {of: keyof typeof excesses}): Wording {
  return {
    message: `the prose is not read, since up to here it has more than ${excesses[of]}; take most of them out`,
  }
}

interface Unclear {
  written: string
  likely: readonly string[]
}

export function dayUnclear({written, likely}: Unclear): Wording {
  const why = likely.length > 0 ? 'a day is written year-month-day' : 'there is no such day'
  return {message: `${written}: ${why}${whatWouldDo(likely)}`, expected: [...likely]}
}

export function hoursUnclear({written, likely}: Unclear): Wording {
  return {
    message: `(${written}) is not read as hours, which are written as (1 h 30 min)${whatWouldDo(likely)}`,
    expected: [...likely],
  }
}
