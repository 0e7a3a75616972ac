/** Parts of the page that come by themselves, and what is lacking without each. */
const lacking = {
  plan: 'what computes the plan',
  checks: 'what would not work',
  making: 'the cut list, the plan to save and the text of a new build',
}

type Part = keyof typeof lacking

export interface Parts {
  /** A part cannot be fetched: it is tried again once it can, and told until then. */
  lacks: (part: Part) => void
  has: (part: Part) => void
}

const againMs = 5000

/** Tell of the parts of the page that cannot be fetched, and have them tried again once they can be. */
export function watchParts(page: HTMLElement, again: (part: Part) => void): Parts {
  const told = page.querySelector<HTMLElement>('[data-part=parts]')!
  const files = page.dataset.files?.split(' ') ?? []
  const missing = new Set<Part>()
  /** Parts that were tried anew although all was there to be fetched. */
  const tried = new Set<Part>()
  let soon: ReturnType<typeof setTimeout> | undefined

  async function look(): Promise<void> {
    clearTimeout(soon)
    if (missing.size === 0) return
    const are = await stateOf(files)
    const names = [...missing].map((part) => lacking[part]).join('; ')
    if (are === 'here') {
      const fresh = [...missing].filter((part) => !tried.has(part))
      for (const part of fresh) {
        tried.add(part)
        again(part)
      }
      if (fresh.length === 0)
        told.textContent = `This browser cannot run all of this page; a newer one can. Missing: ${names}.`
    } else if (are === 'gone') {
      const load = document.createElement('button')
      load.type = 'button'
      load.textContent = 'Load the page again'
      load.addEventListener('click', () => location.reload())
      told.replaceChildren(
        `This page is older than the site, and cannot fetch: ${names}. The values that you changed are kept. `,
        load,
      )
    } else {
      told.textContent = `No network. Missing: ${names}. It comes by itself once the network is back.`
      soon = setTimeout(look, againMs)
    }
  }

  addEventListener('online', look)
  return {
    lacks(part) {
      missing.add(part)
      void look()
    },
    has(part) {
      tried.delete(part)
      if (!missing.delete(part) || missing.size > 0) return
      told.textContent = 'All of this page is here again.'
    },
  }
}

/** Say whether files can be fetched: `gone` where the site answers, and has them no more. */
async function stateOf(files: readonly string[]): Promise<'here' | 'gone' | 'away'> {
  try {
    const answers = await Promise.all(files.map((file) => fetch(file)))
    return answers.every(({ok}) => ok) ? 'here' : 'gone'
  } catch {
    return 'away'
  }
}
