/** Name several alike by what they share: `neck lamination 2, strip 3` is `neck lamination 2`, `rail 17` is `rail`. */
export const plainName = (name: string): string => name.replace(/(, strip)? \d+$/, '')
