import type {Check} from './check.ts'

/** A core or a wrap on a string whose gauge says that it is plain. */
export const coreOnPlain: Check = {
  rule: 'core-on-plain',
  find: ({values}) =>
    (values.strings ?? []).flatMap(({gauge, core, wrap}, i) => {
      if (!gauge || gauge.wound || (!core && !wrap)) return []
      const what = core && wrap ? 'a core and a wrap' : core ? 'a core' : 'a wrap'
      const wound = `${gauge.text}${/[a-z"″]$/i.test(gauge.text) ? ' ' : ''}w`
      return {
        at: `strings.${i + 1}.gauge`,
        message: `${gauge.text} is a plain string, and a plain string has no core and no wrap, yet ${what} is given; write ${wound} if it is wound`,
        expected: [wound],
        cause: `strings.${i + 1}.${core ? 'core' : 'wrap'}`,
      }
    }),
}
