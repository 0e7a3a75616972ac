import type {Check, Finding} from './check.ts'

/** Tuners listed in another number than the strings, or `at` and `off` in unequal numbers. */
export const tunersUneven: Check = {
  rule: 'tuners-uneven',
  find: ({values: {tuners, strings}}) => {
    const [ats, offs] = [tuners?.at?.length, tuners?.off?.length]
    const count = strings?.length
    const uneven = (key: 'at' | 'off', listed: number | undefined): Finding[] =>
      count === undefined || listed === undefined || listed === count
        ? []
        : [
            {
              at: `tuners.${key}`,
              message: `${listed} places under tuners ${key} for ${count} ${count === 1 ? 'string' : 'strings'}; list one for each string, in the strings’ order`,
              cause: 'strings',
            },
          ]
    const found = [...uneven('at', ats), ...uneven('off', offs)]
    if (found.length > 0 || ats === undefined || offs === undefined || ats === offs) return found
    return [
      {
        at: 'tuners.off',
        message: `${offs} places under tuners off and ${ats} under at; each tuner needs one of both`,
        cause: 'tuners.at',
      },
    ]
  },
}
