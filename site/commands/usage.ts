import {type ParseArgsConfig, parseArgs} from 'node:util'
import {asCalled} from '../kit/called.ts'

// Whoever reads a part of what is printed, as `head` does, has had enough.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit()
  throw error
})

type Options = NonNullable<ParseArgsConfig['options']>
type Read<T extends Options> = ReturnType<typeof parseArgs<{options: T; allowPositionals: true}>>

/**
 * Read a command's words, or say how it is used and leave with exit code 2.
 * `usage` is one screen; `--help` prints it too, and leaves with 0.
 */
export function readArguments<T extends Options>(
  usage: string,
  options: T,
  {fewest = 0, most = Number.POSITIVE_INFINITY} = {},
): Read<T> {
  let wrong: string
  try {
    const read = parseArgs({
      options: {...options, help: {type: 'boolean', short: 'h'}},
      allowPositionals: true,
    })
    if ((read.values as {help?: boolean}).help) {
      console.log(asCalled(usage))
      process.exit(0)
    }
    const count = read.positionals.length
    if (count >= fewest && count <= most) return read as Read<T>
    wrong = count < fewest ? 'a word is missing' : `"${read.positionals[most]}" is a word too many`
  } catch (error) {
    wrong = (error as Error).message.split(/\.\s/)[0]!
  }
  console.error(asCalled(`${wrong}\n\n${usage}`))
  process.exit(2)
}
