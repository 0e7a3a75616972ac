/** Scale lengths that players tell apart, in mm: about ukulele, short guitar and long guitar; common practice, no source. */
export const scaleRanges = {
  in: [
    {says: 'under 21 in', fromMm: 0, toMm: 533.4},
    {says: '21 to 25 in', fromMm: 533.4, toMm: 635},
    {says: '25 in and more', fromMm: 635, toMm: 10_000},
  ],
  mm: [
    {says: 'under 530 mm', fromMm: 0, toMm: 530},
    {says: '530 to 640 mm', fromMm: 530, toMm: 640},
    {says: '640 mm and more', fromMm: 640, toMm: 10_000},
  ],
} as const
