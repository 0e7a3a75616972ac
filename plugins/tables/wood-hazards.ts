/**
 * What the dust of a wood does to some people, by its row of the wood table. What it does depends on the wood, the
 * dose and the person; one piece may hold far more of it than the next, and a wood not listed may still harm
 * (HSE Woodworking Sheet WIS30, Toxic Woods).
 *
 * `chart`: Woods and Calnan, Toxic Woods (1976), and ILO (1983), by way of a chart in a woodturning periodical of
 * June 1990. `sheet`: HSE WIS30, Table 2, from memory. `cancer` is the group of the American Conference of
 * Governmental Industrial Hygienists by way of OSHA, Wood Dust: known (oak, beech) or suspected (birch, mahogany, teak, walnut).
 */
export interface WoodHazardRow {
  harms: string
  source: 'chart' | 'sheet'
  cancer?: 'known' | 'suspected'
  /** Has a caution of its own, which says more. */
  own?: 'redcedar' | 'rosewood'
}

// biome-ignore format: a line each
export const woodHazards: Readonly<Record<string, WoodHazardRow>> = {
  'african mahogany': {harms: 'skin and airways', source: 'chart', cancer: 'suspected'},
  'african padauk': {harms: 'eyes, skin and airways', source: 'chart'},
  'american beech': {harms: 'eyes, skin and airways', source: 'chart', cancer: 'known'},
  'black locust': {harms: 'eyes and skin, and turns the stomach', source: 'chart'},
  'black oak': {harms: 'eyes and skin', source: 'chart', cancer: 'known'},
  'black walnut': {harms: 'eyes and skin', source: 'chart', cancer: 'suspected'},
  'brazilian rosewood': {harms: 'eyes, skin and airways', source: 'chart', own: 'rosewood'},
  cocobolo: {harms: 'eyes, skin and airways', source: 'chart', own: 'rosewood'},
  ebony: {harms: 'eyes and skin', source: 'chart'},
  'engelmann spruce': {harms: 'airways', source: 'chart'},
  'goncalo alves': {harms: 'eyes and skin', source: 'chart'},
  greenheart: {harms: 'eyes and skin', source: 'chart'},
  'indian rosewood': {harms: 'eyes, skin and airways', source: 'chart', own: 'rosewood'},
  iroko: {harms: 'eyes, skin and airways, and inflames the lungs', source: 'chart'},
  'northern red oak': {harms: 'eyes and skin', source: 'chart', cancer: 'known'},
  'northern white-cedar': {harms: 'airways, by the acid of redcedar at about half the level', source: 'chart'},
  obeche: {harms: 'eyes, skin and airways', source: 'chart'},
  'paper birch': {harms: 'airways', source: 'chart', cancer: 'suspected'},
  purpleheart: {harms: 'the stomach', source: 'chart'},
  'red spruce': {harms: 'airways', source: 'chart'},
  redwood: {harms: 'eyes, skin and airways, and inflames the lungs', source: 'chart'},
  sapele: {harms: 'skin', source: 'sheet'},
  sassafras: {harms: 'airways', source: 'chart'},
  'sitka spruce': {harms: 'airways', source: 'chart'},
  'southern red oak': {harms: 'eyes and skin', source: 'chart', cancer: 'known'},
  'sweet birch': {harms: 'airways', source: 'chart', cancer: 'suspected'},
  teak: {harms: 'eyes, skin and airways, and inflames the lungs', source: 'chart', cancer: 'suspected'},
  'true mahogany': {harms: 'skin and airways', source: 'chart', cancer: 'suspected'},
  wenge: {harms: 'eyes, skin and airways; its splinters go septic', source: 'chart'},
  'western redcedar': {harms: 'airways', source: 'chart', own: 'redcedar'},
  'white oak': {harms: 'eyes and skin', source: 'chart', cancer: 'known'},
  'white spruce': {harms: 'airways', source: 'chart'},
  'yellow birch': {harms: 'airways', source: 'chart', cancer: 'suspected'},
}

/**
 * Woods whose oil or wax keeps glue from taking hold. Source: Wood Handbook ch. 10, extractives and the table of how
 * easily species bond, from memory; cocobolo: common practice, no source.
 */
export const oilyWoods: readonly string[] = [
  'brazilian rosewood',
  'cocobolo',
  'ebony',
  'indian rosewood',
  'ipe',
  'purpleheart',
  'teak',
]

/**
 * What a listing under CITES means for an instrument, by the words of the wood table's `trade`, the first that fits.
 * Source: CITES, Appendices and annotations #5, #6, #15 (as amended in 2019) and #17 (2023, 2024); CITES Decision
 * 18.321 (Rev. CoP19). Later conferences are not in it.
 */
export const tradeNotes = [
  {listing: '#15', means: 'finished instruments and their parts are let off, loose wood is not'},
  {listing: '#', means: 'boards and blanks are listed, a finished instrument is not'},
  {listing: 'Appendix I', means: 'even an old, finished instrument needs a certificate'},
] as const
