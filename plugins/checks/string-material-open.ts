import type {Check} from './check.ts'

/** A plain string too thick to be taken for steel without a word, so that nothing is said of its pull. */
export const stringMaterialOpen: Check = {
  rule: 'string-material-open',
  find: ({values}, {strings = []}) =>
    (values.strings ?? []).flatMap(({gauge, material}, i) => {
      const isKnown =
        material !== undefined || strings[i]?.massPerLengthKgM !== undefined || strings.length === 0
      if (!gauge || gauge.wound || isKnown) return []
      const wound = `${gauge.text}${/[a-z"″]$/i.test(gauge.text) ? ' ' : ''}w`
      return {
        at: `strings.${i + 1}.gauge`,
        message: `${gauge.text} is thick for a plain steel string, so its pull is left open; write ${wound} if it is wound, or add its material`,
        expected: [wound],
      }
    }),
}
