#!/usr/bin/env node
import {nearest} from '../../plugins/build-file/schema/nearest.ts'
import {callByOwnName} from '../kit/called.ts'

// The package's one command: its first word names which of the project's commands is meant.

const commands: Readonly<Record<string, () => Promise<unknown>>> = {
  start: () => import('./start.ts'),
  build: () => import('./build.ts'),
  check: () => import('./check.ts'),
  plan: () => import('./plan.ts'),
  new: () => import('./new.ts'),
  editor: () => import('./editor.ts'),
}
const usage = `nut-to-bridge new --empty   begins a journal here: builds/, with its settings
nut-to-bridge new SLUG      a new build file, ready to fill
nut-to-bridge start         shows the journal while you write
nut-to-bridge build         writes the site to _site/
nut-to-bridge check         looks at every build of the journal
nut-to-bridge plan FILE     prints the plan of one build file as JSON
nut-to-bridge editor        tells an editor about a build while you type

Each says more with --help. The journal is the folder builds/ of where you are; nothing else is touched.`

const [name = '--help'] = process.argv.splice(2, 1)
const command = Object.hasOwn(commands, name) ? commands[name] : undefined
if (command) {
  callByOwnName()
  // Files are named from where this is called, whatever called it.
  delete process.env.INIT_CWD
  await command()
} else if (name === '--help' || name === '-h') {
  console.log(usage)
} else {
  const close = nearest(name, Object.keys(commands))
  console.error(`there is no command ${name}${close ? `; was ${close} meant?` : ''}\n\n${usage}`)
  process.exitCode = 2
}
