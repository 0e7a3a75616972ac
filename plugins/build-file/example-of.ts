import type {Kind, LeafName} from './kinds.ts'

const leafExamples: Record<LeafName, string> = {
  angle: 'an angle in degrees such as 13',
  capacitance: 'a capacitance such as 20 nF',
  date: 'a date such as 2026-03-07',
  density: 'a density such as 672 kg/m3',
  duration: 'a duration such as 1 h 30 min',
  flag: 'true or false',
  force: 'a force such as 60 N',
  gauge: 'a gauge such as .017 or .032w',
  label: 'the number of a line such as 7 or 6 1/2',
  length: 'a length such as 3/4 or 19 mm',
  massPerLength: 'a mass per length such as 5.8 g/m',
  money: 'an amount of money such as 2.10',
  number: 'a number',
  pitch: 'a pitch such as D3 or F#3',
  step: 'cents such as 702 or a ratio such as 3/2',
  stiffness: 'a stiffness such as 12.6 GPa',
  text: 'a text',
  wood: 'the name of a wood',
}

/** Word what a kind of value looks like, for a message. */
export function exampleOf(kind: Kind): string {
  switch (kind.is) {
    case 'leaf':
      return leafExamples[kind.leaf]
    case 'choice':
      return `one of ${kind.of.join(', ')}`
    case 'list':
      return kind.countable ? 'a list in square brackets, or a number,' : 'a list in square brackets'
    case 'record':
      return kind.short && kind.short.keys.length > 1
        ? `${kind.short.keys.join(kind.short.between)}, or keys such as ${Object.keys(kind.fields).slice(0, 3).join(', ')},`
        : `keys such as ${Object.keys(kind.fields).slice(0, 3).join(', ')}`
    case 'map':
    case 'measured':
      return 'keys with values'
    case 'either':
      return `${exampleOf(kind.first)}, or ${exampleOf(kind.second)},`
  }
}
