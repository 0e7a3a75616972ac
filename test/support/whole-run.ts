/**
 * The words of a run of many test files, for node. There is a worker for every core (vitest itself leaves one
 * idle, on two cores half of them); it keeps what it has read from file to file, since most of a file's time is
 * reading the program; slow.ts is then read once only, so each may take its time, and what is waited for too. More
 * room for what is young spares a twentieth of it.
 */
export const wholeRun: readonly string[] = [
  '--max-semi-space-size=32',
  'node_modules/vitest/vitest.mjs',
  'run',
  '--pool=threads',
  '--no-isolate',
  '--maxWorkers=100%',
  '--testTimeout=180000',
  '--hookTimeout=180000',
  '--expect.poll.timeout=30000',
]
