/** What wound strings are wound with. */
export interface StringWrapRow {
  densityKgM3: number
  source: string
}

// biome-ignore format: a line each
export const stringWraps = {
  'nickel-plated steel': {densityKgM3: 7900, source: 'steel 7850 (EN 10270-1) under a few per cent of nickel: common practice, no source'},
  'pure nickel': {densityKgM3: 8900, source: 'Polivanov, tables of masses (2006)'},
  'stainless steel': {densityKgM3: 7930, source: 'steel makers’ sheets, grade 302: 0.286 lb/in³'},
  'phosphor bronze': {densityKgM3: 8860, source: 'alloy data sheets after ASTM B139, C51000: 0.320 lb/in³'},
  '80/20 bronze': {densityKgM3: 8670, source: 'from memory, C24000: 0.313 lb/in³'},
  'silver-plated copper': {densityKgM3: 8920, source: 'OpenStax University Physics vol. 1, Table 14.1, copper; the plating is thin'},
} as const satisfies Record<string, StringWrapRow>

export type StringWrap = keyof typeof stringWraps

/**
 * How thick the core of a wound string usually is, as a part of the whole gauge; between rows in a straight line,
 * outside them the nearest row. Common practice, no source.
 */
export const usualCores: readonly {gaugeIn: number; coreFraction: number}[] = [
  {gaugeIn: 0.02, coreFraction: 0.6},
  {gaugeIn: 0.03, coreFraction: 0.5},
  {gaugeIn: 0.042, coreFraction: 0.42},
]

/** How far a core may lie from the usual one, as a part of the gauge. Common practice, no source. */
export const coreSpread = 0.05

/** The thinnest wrap that is wound, in inches. Common practice, no source. */
export const thinnestWrapIn = 0.002
