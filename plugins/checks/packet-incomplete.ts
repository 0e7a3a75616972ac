import type {Check} from './check.ts'

/** A packet's pull without the scale and note that it belongs to, which is not used then. */
export const packetIncomplete: Check = {
  rule: 'packet-incomplete',
  find: ({values}) =>
    (values.strings ?? []).flatMap(({tension, mass}, i) => {
      if (!tension || mass || (tension.pull && tension.scale && tension.note)) return []
      const missing = (['pull', 'scale', 'note'] as const).filter((key) => !tension[key]).join(' and ')
      return {
        at: `strings.${i + 1}.tension`,
        message: `the packet’s pull is not used: it lacks its ${missing}; write it as {pull: 60 N, scale: 25 1/2 in, note: D4}`,
      }
    }),
}
