import {mkdir, readFile, writeFile} from 'node:fs/promises'
import {join} from 'node:path'
import {ownPackage, ownVersion} from '../kit/own-package.ts'

/**
 * Say what reads differently since this journal (its root, absolute) was last shown or built, where that was by
 * another version; remember the present one in `.cache/version.txt`. A journal that never was has nothing to hear.
 */
export async function tellNewVersion(root: string): Promise<string[]> {
  const file = join(root, '.cache/version.txt')
  const last = (await readFile(file, 'utf8').catch(() => '')).trim()
  if (last === ownVersion) return []
  await mkdir(join(root, '.cache'), {recursive: true})
    .then(() => writeFile(file, `${ownVersion}\n`))
    .catch(() => {})
  if (!/^\d+\.\d+\.\d+$/.test(last)) return []
  const changes = await readFile(join(ownPackage.folder, 'CHANGELOG.md'), 'utf8').catch(() => '')
  const told = readsDifferently(changes, last)
  return [
    `This is version ${ownVersion}; this journal was last made by ${last}. Your files are as they were.`,
    ...(told.length > 0 ? ['What reads differently:', ...told] : []),
  ]
}

/** List what reads differently since a version, by the changelog: the points under `### Reads differently`. */
export function readsDifferently(changelog: string, since: string): string[] {
  const versions = changelog.split(/^## /m).slice(1)
  return versions
    .filter((text) => isLater(/^[\d.]+/.exec(text)?.[0] ?? '', since))
    .flatMap((text) => /^### Reads differently\n([^#]*)/m.exec(text)?.[1]?.match(/^- .*$/gm) ?? [])
}

function isLater(version: string, than: string): boolean {
  const [one, other] = [version, than].map((each) => each.split('.').map(Number))
  const at = one!.findIndex((part, i) => part !== other![i])
  return at >= 0 && one![at]! > (other![at] ?? 0)
}
