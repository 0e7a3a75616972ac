import {join} from 'node:path'
import {fileURLToPath} from 'node:url'
import type {UserConfig} from '@11ty/eleventy'
import pMap from 'p-map'
import {writeInto} from '../kit/cache.ts'
import {
  type Artefact,
  fileOf,
  type Layout,
  type LayoutName,
  type Page,
  type PageData,
  type Unmade,
} from '../kit/page.ts'
import type {Surround} from '../kit/site-data.ts'
import {frame} from '../layouts/frame.ts'
import {sheet} from '../layouts/sheet.ts'

/** Write pages of a site into `folder` (absolute); answers those that could not be made. */
export async function writePages(
  pages: readonly Page[],
  around: Surround,
  folder: string,
): Promise<Unmade[]> {
  const unmade: Unmade[] = []
  const sheltered = pages.map((page) => ({...page, content: () => contentOf(page, unmade)}))
  if (pages.length > 0) await publish(sheltered, {frame: frame(around), sheet: sheet(around)}, folder)
  // Eleventy keeps what it was given until the next time, while that is made.
  for (const page of sheltered) page.content = () => ''
  return unmade
}

/** One page that fails says so in its place, and the others stand. */
function contentOf({address, layout, content}: Page, unmade: Unmade[]): string {
  try {
    return content()
  } catch (error) {
    unmade.push({address, message: (error as Error).message})
    return layout === 'bare' ? '' : '<p>This program fails to show this page, which is its own fault.</p>'
  }
}

/** No file can hold these lines, so that nothing is ever taken for front matter. */
const neverInAFile: [string, string] = ['\u0000 opens', '\u0000 closes']

/**
 * Write pages into `folder` (absolute) with Eleventy, each inside its layout.
 *
 * Every page and layout is a typed function handed over as a virtual template. Eleventy is given no folder of
 * the journal, so nothing that lies there (scripts, data files, templates, front matter in other languages) can
 * run, move a page or name a layout. A page's file comes from its address alone.
 */
async function publish(
  pages: readonly Page[],
  layouts: Readonly<Record<Exclude<LayoutName, 'bare'>, Layout>>,
  folder: string,
): Promise<void> {
  // It is loaded where there is something to write, without what it prepares for templates that change on disk.
  process.env.ELEVENTY_SKIP_ESM_RESOLVER = 'true'
  const {default: Eleventy} = await import('@11ty/eleventy')
  const eleventy = new Eleventy(fileURLToPath(new URL('../pages/', import.meta.url)), folder, {
    quietMode: true,
    configPath: false,
    config(config) {
      closeEleventy(config)
      for (const [name, layout] of Object.entries(layouts)) addLayout(config, name, layout)
      pages.forEach((page, at) => {
        addPage(config, page, at)
      })
    },
  })
  eleventy.disableLogger()
  await eleventy.init()
  await eleventy.write()
}

function closeEleventy(config: UserConfig): void {
  config.setTemplateFormats(['11ty.js'])
  config.setDataFileSuffixes([])
  config.setFrontMatterParsingOptions({delimiters: neverInAFile})
  config.setUseGitIgnore(false)
}

function addLayout(config: UserConfig, name: string, layout: Layout): void {
  config.addTemplate(`_includes/${name}.11ty.js`, (data: {of: PageData; address: string; content: string}) =>
    layout({...data.of, address: data.address, content: data.content}),
  )
}

function addPage(config: UserConfig, page: Page, at: number): void {
  config.addTemplate(`page-${at}.11ty.js`, {
    data: {
      permalink: '/' + fileOf(page.address),
      of: page.data,
      address: page.address,
      eleventyExcludeFromCollections: true,
      ...(page.layout === 'bare' ? {} : {layout: `${page.layout}.11ty.js`}),
    },
    render: () => page.content(),
  })
}

/**
 * Write the files of the site that are no pages into `folder`; answers those that could not be made. What the disk
 * refuses is thrown: then no file is safe. Two at a time, since pictures take memory while they are drawn.
 */
export async function writeFiles(artefacts: readonly Artefact[], folder: string): Promise<Unmade[]> {
  let refused: unknown
  const write = async ({address, bytes}: Artefact): Promise<Unmade | undefined> => {
    if (refused) return undefined
    const file = join(folder, fileOf(address))
    let content: string | Uint8Array
    try {
      content = await bytes()
    } catch (error) {
      return {address, message: (error as Error).message}
    }
    try {
      await writeInto(file, content)
    } catch (error) {
      refused = error
    }
    return undefined
  }
  const unmade = (await pMap(artefacts, write, {concurrency: 2})).filter((one) => one !== undefined)
  if (refused) throw refused
  return unmade
}
