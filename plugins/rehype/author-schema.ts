import {defaultSchema, type Schema} from 'hast-util-sanitize'

// Media of another address, and what HTML no longer has, are left out; the rest is what Markdown itself can say.
const withoutTags = ['picture', 'source', 'strike', 'tt']
const anywhere = ['dir', 'id', 'lang', 'title']

/** What an author's HTML may hold: no script, style, class, form or handler, and no id that the page itself uses. */
export const authorSchema: Schema = {
  ...defaultSchema,
  clobberPrefix: 'own-',
  tagNames: [
    ...(defaultSchema.tagNames ?? []).filter((tag) => !withoutTags.includes(tag)),
    'figcaption',
    'figure',
    'time',
  ],
  attributes: {
    a: [
      ['className', 'data-footnote-backref'],
      'href',
      'dataFootnoteBackref',
      'dataFootnoteRef',
      'ariaDescribedBy',
      'ariaLabel',
    ],
    code: [['className', /^language-./]],
    details: ['open'],
    h2: [['className', 'sr-only']],
    img: ['alt', 'height', 'src', 'width'],
    input: ['checked', ['disabled', true], ['type', 'checkbox']],
    li: [['className', 'task-list-item']],
    ol: [['className', 'contains-task-list'], 'reversed', 'start'],
    section: ['dataFootnotes', ['className', 'footnotes']],
    td: ['align', 'colSpan', 'rowSpan'],
    th: ['align', 'colSpan', 'rowSpan', 'scope'],
    time: ['dateTime'],
    ul: [['className', 'contains-task-list']],
    '*': anywhere,
  },
  protocols: {...defaultSchema.protocols, href: ['http', 'https', 'mailto', 'tel']},
}
