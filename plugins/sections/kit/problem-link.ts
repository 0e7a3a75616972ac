import type {Link} from 'mdast'
import type {RuleName} from '../../tables/rules.ts'
import {type Inline, link} from './inline.ts'

/** Link to the page of rules, at the rule that a problem comes from: what it looks for, why, how to mend it. */
export function problemLink(rule: RuleName, ...content: Inline[]): Link {
  return link('/rules/#' + rule, ...content)
}
