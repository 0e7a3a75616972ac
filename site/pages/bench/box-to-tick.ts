import type {Element, ElementContent} from 'hast'
import {h} from 'hastscript'

/** Set a box before what it ticks. The browser keeps ticks by `key`, which no other box of the sheet has. */
export function boxToTick(key: string, words: (string | ElementContent)[], isTicked = false): Element {
  const box = h('input', {type: 'checkbox', value: key, ...(isTicked && {checked: true})})
  return h('label', [box, ' ', h('span', words)])
}
