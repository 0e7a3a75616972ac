import {spawnSync} from 'node:child_process'
import {accessSync, constants, existsSync} from 'node:fs'
import {delimiter, join} from 'node:path'
import {type Browser, chromium} from 'playwright-core'

/** The browser without its own window costs about a third less. */
const windowless = 'chromium-headless-shell'
const names = [windowless, 'chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome']

/** Start a real browser, which sets type as a telephone does: not hinted to whole pixels. */
export async function openBrowser(): Promise<Browser> {
  const isRoot = process.getuid?.() === 0
  const args = ['--font-render-hinting=none', ...(isRoot ? ['--no-sandbox'] : [])]
  return chromium.launch({executablePath: browserPath(), args})
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
  console.log(`Installing the package ${windowless}, which the tests drive`)
  spawnSync('apt-get', ['update'], {stdio: 'ignore'})
  spawnSync('apt-get', ['install', '-y', '--no-install-recommends', windowless], {stdio: 'ignore'})
  return onPath()
}
