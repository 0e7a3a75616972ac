import {plainText} from './plain-text.ts'
import {readNumber} from './read-number.ts'
import {misreading, quoted, type Reading} from './reading.ts'

/** Read an amount of the journal's currency: a number without its sign or letters. */
export function readMoney(text: string): Reading<number> {
  const bare = plainText(text)
    .replace(/^([$€£¥]|[A-Za-z]{3} ?)|( ?[A-Za-z]{3}|[$€£¥])$/g, '')
    .trim()
  const amount = readNumber(bare, 'unreadable-money', 'an amount of money')
  if (!amount.ok || bare === plainText(text)) return amount
  return misreading(
    'unreadable-money',
    `${quoted(text)} names a currency, which the journal does for every cost`,
    [bare],
  )
}
