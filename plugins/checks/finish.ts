import {numbers} from '../build-file/heal/spellings.ts'
import {ownAt} from '../build-file/schema/path.ts'
import * as words from '../words/findings/finish.ts'
import {rule} from './rule.ts'

const file = (finish: string) => `---\ntitle: Needle box\nfinish: ${finish}\n---\n`

const spelt = [...numbers, 'eleven', 'twelve']
const count = `(?<count>\\d{1,2}|${spelt.join('|')})`
/** A number of coats within a finish's name: `oil x3`, `oil, 3 coats`, `three coats of oil`. */
const countedNames = [
  `(?<name>.+?)[\\s,:]*[x×*]\\s*${count}`,
  `(?<name>.+?)[\\s,:]+\\(?${count}\\s*(?:x|×|coats?|times|layers?)\\)?`,
  `${count}\\s*(?:x|×|coats?(?:\\s+of)?|layers?(?:\\s+of)?)\\s+(?<name>.+)`,
].map((pattern) => new RegExp(`^${pattern}$`, 'iu'))

function counted(text: string): {name: string; coats: number} | undefined {
  for (const pattern of countedNames) {
    const {name, count: said} = pattern.exec(text.trim())?.groups ?? {}
    if (name && said) return {name, coats: spelt.indexOf(said.toLowerCase()) + 1 || Number(said)}
  }
  return undefined
}

export const finishRules = {
  'coats-in-name': rule({
    severity: 'warning',
    about: 'file',
    what: 'A number of coats in the name of a finish.',
    why: 'It is read as part of the name, and one coat is planned.',
    mend: 'Write the number under coats.',
    passes: file('{kind: oil, coats: 3}'),
    fails: file('oil x3'),
    find: ({values, keys}) =>
      (values.finish ?? []).flatMap(({kind}, i) => {
        const found = kind && counted(kind.value)
        if (!found) return []
        const at = `finish.${i + 1}`
        const isAlone = !ownAt(keys, `${at}.kind`)
        return [{at: isAlone ? at : `${at}.kind`, ...found, isAlone}]
      }),
    says: words.coatsInName,
  }),
}
