import type {Wording} from './wording.ts'

/** Places listed under a key for so many strings, or, where the strings are not listed, for so many under `at`. */
export function tunersUneven({
  key,
  listed,
  ...facts
}: {key: string; listed: number} & ({strings: number} | {ats: number})): Wording {
  return {
    message:
      'strings' in facts
        ? `${listed} places under tuners ${key} for ${facts.strings} ${facts.strings === 1 ? 'string' : 'strings'}; list one for each string, in the strings’ order`
        : `${listed} places under tuners ${key} and ${facts.ats} under at; each tuner needs one of both`,
  }
}
