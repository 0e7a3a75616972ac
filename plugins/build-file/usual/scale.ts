import {type AssumptionRow, hasStrings, isFretted, practice} from './row.ts'

function repeats(pattern: {value: number}[] | undefined): string | undefined {
  if (!pattern?.length) return undefined
  return String(pattern.at(-1)!.value === 12 ? pattern.length * 2 : pattern.length)
}

/** What an instrument, its scale and its pitch usually are. */
export const scaleRows: readonly AssumptionRow[] = [
  {path: 'handed', value: () => 'right', why: practice, says: 'right'},
  {path: 'publish', value: () => 'true', why: practice, says: 'true'},
  {
    path: 'status',
    value: (v) => (v.started ? 'on the bench' : 'idea'),
    why: 'on the bench once started, an idea until then',
    says: 'idea, or on the bench once started',
  },
  {
    path: 'scale.fretted',
    value: (v) => (v.scale || hasStrings(v) ? 'false' : undefined),
    why: practice,
    says: 'false',
  },
  {
    path: 'play',
    value: (v) => (isFretted(v) ? 'fingers' : 'slide'),
    why: practice,
    says: 'slide if not fretted, else fingers',
  },
  {
    path: 'scale.pattern',
    value: (v) => (v.scale?.length ? 'chromatic' : undefined),
    why: practice,
    says: 'chromatic',
  },
  {
    path: 'scale.lines',
    value: (v) => {
      const pattern = v.scale?.pattern
      if (!v.scale?.length) return undefined
      return Array.isArray(pattern) ? repeats(pattern) : pattern?.value === 'diatonic' ? '14' : '19'
    },
    why: practice,
    says: '19 if chromatic, 14 if diatonic',
  },
  {
    path: 'scale.temperament',
    value: (v) => (v.scale?.length ? 'equal' : undefined),
    why: practice,
    says: 'equal',
  },
  {
    path: 'reference-pitch',
    value: (v) => (hasStrings(v) ? '440' : undefined),
    why: 'ISO 16, standard tuning frequency',
    says: '440',
  },
]
