/**
 * The words of a run of many test files, for node. There are three workers for two cores (vitest itself leaves one core
 * idle, and a worker that waits for a browser or a command uses none), and each keeps what it has read from file to file, since most of a file's time is
 * reading the program; slow.ts is then read once only, so each may take its time.
 */
export const wholeRun: readonly string[] = [
  'node_modules/vitest/vitest.mjs',
  'run',
  '--pool=threads',
  '--no-isolate',
  '--maxWorkers=150%',
  '--testTimeout=180000',
  '--hookTimeout=180000',
]
