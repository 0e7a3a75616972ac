import {spawnSync} from 'node:child_process'
import {accessSync, constants, existsSync} from 'node:fs'
import {delimiter, join} from 'node:path'
import {type Browser, chromium} from 'playwright-core'

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome']

/** Start a real browser. */
export async function openBrowser(): Promise<Browser> {
  const executablePath = browserPath()
  const isRoot = process.getuid?.() === 0
  return chromium.launch({executablePath, args: isRoot ? ['--no-sandbox'] : []})
}

/** Find a browser: `$CHROMIUM`, or one on the path, or, as root on Debian, the package, which is then installed. */
export function browserPath(): string {
  const path = process.env.CHROMIUM ?? onPath() ?? installed()
  if (path) return path
  throw new Error(
    'No browser for the tests: set CHROMIUM=/path/to/chromium, or install the package chromium.',
  )
}

function onPath(): string | undefined {
  const folders = (process.env.PATH ?? '').split(delimiter)
  return folders.flatMap((folder) => names.map((name) => join(folder, name))).find(isProgram)
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}

function installed(): string | undefined {
  if (process.getuid?.() !== 0 || !existsSync('/etc/debian_version')) return undefined
  console.log('Installing the package chromium, which the tests drive')
  spawnSync('apt-get', ['update'], {stdio: 'ignore'})
  spawnSync('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], {stdio: 'ignore'})
  return onPath()
}
