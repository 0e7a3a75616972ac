/** What all pages of one site share: where it lies, what it is called, and where its own files are. */
export interface Surround {
  /** `/`, or the path that the site lies under: `/journal/`. */
  prefix: string
  /** The journal's name. */
  title: string
  maker?: string
  /** Where the site is published, without a slash at its end: `https://journal.example`. */
  origin?: string
  /** Addresses of style sheet, scripts and icon, by name. */
  assets: Readonly<Record<string, string>>
  /** Served while somebody writes: pages reload themselves, and drafts are there. */
  isWriting: boolean
}
