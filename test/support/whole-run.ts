/**
 * The words of a run of many test files, for node. One worker keeps what it has read from file to file, since most of
 * a file's time is reading the program; and slow.ts is then read once only, so each may take its time.
 */
export const wholeRun: readonly string[] = [
  'node_modules/vitest/vitest.mjs',
  'run',
  '--pool=threads',
  '--no-isolate',
  '--testTimeout=180000',
  '--hookTimeout=180000',
]
