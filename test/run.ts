import {spawnSync} from 'node:child_process'
import {mkdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {browserPath} from './support/browser.ts'
import {wholeRun} from './support/whole-run.ts'

// Types, lint and tests, each to its end, so that one run shows all there is to mend.

const results = '.cache/tests.json'
const run = (name: string, words: string[]) => {
  console.log(`\n${name}`)
  return spawnSync(process.execPath, words, {stdio: 'inherit'}).status === 0
}

browserPath()
mkdirSync('.cache', {recursive: true})
rmSync(results, {force: true})
const steps = [
  run('Types', ['node_modules/typescript/bin/tsc']),
  run('Lint', ['node_modules/@biomejs/biome/bin/biome', 'check', '.']),
]
// Compiled here, it is not by each worker; where it cannot be, every test of a command says why.
await import('../site/program.js').catch(() => {})
run('Tests', [
  ...wholeRun,
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${results}`,
  ...process.argv.slice(2),
])

const {passed, failed} = counts()
const line = `${passed} passed, ${failed} failed`
writeFileSync('.cache/summary.txt', `${line}\n`)
console.log(`\n${line}`)
process.exitCode = failed > 0 ? 1 : 0

/** Count tests, types and lint as one each; a file that could not run is a failure. */
function counts(): {passed: number; failed: number} {
  const good = steps.filter(Boolean).length
  const own = {passed: good, failed: steps.length - good}
  try {
    const report = JSON.parse(readFileSync(results, 'utf8')) as Report
    const broken = report.testResults.filter(
      ({status, assertionResults}) =>
        status === 'failed' && assertionResults.every((each) => each.status !== 'failed'),
    ).length
    return {passed: own.passed + report.numPassedTests, failed: own.failed + report.numFailedTests + broken}
  } catch {
    return {...own, failed: own.failed + 1}
  }
}

interface Report {
  numPassedTests: number
  numFailedTests: number
  testResults: {status: string; assertionResults: {status: string}[]}[]
}
