import type {Kind} from '../schema/kinds.ts'

const samples: Readonly<Record<string, readonly [string, string]>> = {
  length: ['3/4', '19'],
  angle: ['13', '13'],
  gauge: ['.017', '0.43'],
  pitch: ['D3', 'D3'],
  wood: ['beech', 'beech'],
  text: ['"words in quotes"', '"words in quotes"'],
  number: ['12', '12'],
  flag: ['true', 'true'],
  date: ['2026-03-07', '2026-03-07'],
  money: ['2.10', '2.10'],
  label: ['12', '12'],
}

/** Write an example of a kind of value, with what is commonly said there. */
export function sampleOf(kind: Kind, units: 'in' | 'mm'): string | undefined {
  switch (kind.is) {
    case 'leaf':
      return samples[kind.leaf]?.[units === 'in' ? 0 : 1]
    case 'choice':
      return kind.of[0]
    case 'list': {
      const item = sampleOf(kind.item, units)
      return item && `[${item}]`
    }
    case 'record': {
      const {short} = kind
      const keys = short ? short.keys : Object.keys(kind.fields).slice(0, 2)
      const parts = keys.map((key) => [key, sampleOf(kind.fields[key] as Kind, units)] as const)
      if (parts.some(([, text]) => text === undefined)) return undefined
      if (short) return parts.map(([, text]) => text).join(short.between)
      return `{${parts.map(([key, text]) => `${key}: ${text}`).join(', ')}}`
    }
    case 'either':
      return sampleOf(kind.second, units)
    default:
      return undefined
  }
}
