/** The package's own name on the command line. */
export const ownName = 'nut-to-bridge'

const called = {byOwnName: false}

/** From now on commands are shown as the package is called, not as npm is asked for them within the project. */
export function callByOwnName(): void {
  called.byOwnName = true
}

const asked = /npm (?:run )?(?:--silent )?(start|build|check|plan|new|editor)\b(?: --(?= ))?/g

/** Turn commands in a text into what is typed here; lines that begin with one keep their second column in line. */
export function asCalled(text: string): string {
  if (!called.byOwnName) return text
  const lines = text.split('\n').map((line) => {
    const [, command, says] = /^(npm .*?)\s{2,}(\S.*)$/.exec(line) ?? []
    return command
      ? {command: command.replace(asked, `${ownName} $1`), says}
      : line.replace(asked, `${ownName} $1`)
  })
  const widest = Math.max(0, ...lines.map((line) => (typeof line === 'string' ? 0 : line.command.length)))
  return lines
    .map((line) => (typeof line === 'string' ? line : `${line.command.padEnd(widest)}  ${line.says}`))
    .join('\n')
}
