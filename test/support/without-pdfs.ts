import {existsSync, readFileSync, rmSync} from 'node:fs'
import {basename, join, resolve} from 'node:path'
import type {PluginBuild} from 'esbuild'
import {compile, program} from '../../site/program.js'

/** What node runs for a command of a program that is the project's but for PDFs, of which it writes none. */
export async function withoutPdfs(name: string): Promise<string[]> {
  const home = resolve('.cache/without-pdfs')
  const folder = join(home, basename(program))
  if (!existsSync(folder)) {
    // Those of older programs nobody runs any more.
    rmSync(home, {recursive: true, force: true})
    await compile(folder, [{name: 'no PDFs', setup: leaveOutPdfs}])
  }
  return [join(folder, 'commands', `${name}.js`)]
}

function leaveOutPdfs(building: PluginBuild): void {
  building.onLoad({filter: /drawings\/templates\/sheets\.ts$/}, ({path}) => {
    const text = readFileSync(path, 'utf8')
    const contents = text.replace(/(function templatePdf\([^{]*\{)/, '$1 return undefined\n')
    if (contents === text) throw new Error('the PDFs are written elsewhere')
    return {contents, loader: 'ts'}
  })
}
