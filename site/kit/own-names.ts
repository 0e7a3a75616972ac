/** The files that a build gives away, by their names beside its page. */
export const downloadNames = [
  'start.md',
  'template-letter.pdf',
  'template-a4.pdf',
  'template.svg',
  'template.dxf',
] as const

export type DownloadName = (typeof downloadNames)[number]

/** What lies beside a build's page and is made by this program, by its first name below the page's address. */
const ownNames: readonly string[] = [
  'index.html',
  'build.md',
  'plan.json',
  'around.json',
  'care',
  'bench',
  'photos',
  'changes',
  'drawings',
  'share.png',
  ...downloadNames,
]

/** Tell whether a file of the build's folder would lie where the page has one of its own, or below it. */
export const isOwnName = (inside: string): boolean => ownNames.includes(inside.split('/')[0]!.toLowerCase())

/** What stands in for a build's photograph, among the drawings of its page. */
export const drawnCover = 'cover.svg'
