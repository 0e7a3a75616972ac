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
