/** The directives, in the order in which sections follow that a file does not place. */
export const sectionNames = [
  'layout',
  'lines',
  'strings',
  'intonation',
  'neck',
  'scarf',
  'box',
  'drilling',
  'fasteners',
  'cut-list',
  'bill',
  'work-order',
  'setting-up',
  'cautions',
  'drawing',
  'as-built',
  'played',
  'lineage',
  'assumptions',
  'before-you-cut',
] as const

/** What `::drawing{view=…}` can show. */
export const drawingViews = ['top', 'side', 'head', 'section', 'inside'] as const

export type SectionName = (typeof sectionNames)[number]
