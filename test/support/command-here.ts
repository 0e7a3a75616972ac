import {resolve} from 'node:path'
import {vi} from 'vitest'
import type {Ran} from './temp-journal.ts'

const commands = resolve('site/commands')
let count = 0

/**
 * Run `check`, `new` or `plan` within this process, as a module made anew each time: what it says and how it leaves,
 * without the half second in which a process of its own reads the program.
 */
export async function commandHere(name: string, words: readonly string[], cwd: string): Promise<Ran> {
  const said = {stdout: '', stderr: ''}
  let left: (Error & {status: number}) | undefined
  /** Nothing is said after leaving: where leaving is caught on its way out, a process would not be there any more. */
  const into = (stream: keyof typeof said, text: unknown) => {
    if (!left) said[stream] += text
    return true
  }
  vi.stubEnv('INIT_CWD', undefined)
  vi.stubEnv('NO_COLOR', '1')
  vi.spyOn(process, 'cwd').mockReturnValue(cwd)
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => into('stdout', text))
  vi.spyOn(console, 'log').mockImplementation((line) => void into('stdout', `${line}\n`))
  vi.spyOn(console, 'error').mockImplementation((line) => void into('stderr', `${line}\n`))
  vi.spyOn(process, 'exit').mockImplementation((code) => {
    left ??= Object.assign(new Error('left'), {status: Number(code ?? 0)})
    throw left
  })
  const {argv, exitCode} = process
  process.argv = [...argv.slice(0, 2), ...words]
  process.exitCode = undefined
  try {
    await import(/* @vite-ignore */ `${commands}/${name}.ts?${count++}`).catch((error) => {
      if (error !== left) throw error
    })
    return {status: left?.status ?? Number(process.exitCode ?? 0), ...said}
  } finally {
    process.argv = argv
    process.exitCode = exitCode
    vi.restoreAllMocks()
    vi.unstubAllEnvs()
  }
}
