// Files of a size that nobody writes, each of one shape: what a stranger may put into a journal to see it stop.

/** Text of about so many characters in all. */
type OfSize = (characters: number) => string

const box =
  'title: Needle box\nbox: 10 1/8 x 7 x 2\nscale: 24 1/4\nstrings: [D3 .030w, A3 .020w, D4 .013]\nneck: {width: 1 5/8, thickness: 3/4, wood: black cherry}\n'

const build = (front: string, body = ''): string => `---\n${box}${front}---\n${body}\n`

/** Repeat a piece, which may count itself, until it is so long. */
function filled(characters: number, piece: string | ((at: number) => string)): string {
  const made: string[] = []
  for (let at = 0, length = 0; length < characters; at++) {
    const next = typeof piece === 'string' ? piece : piece(at)
    made.push(next)
    length += next.length
  }
  return made.join('')
}

const prose =
  (piece: string | ((at: number) => string), before = ''): OfSize =>
  (size) =>
    build('', before + filled(size, piece))

const front =
  (key: string, piece: string | ((at: number) => string), after = ''): OfSize =>
  (size) =>
    build(`${key}${filled(size, piece)}${after}\n`)

const digits = (at: number) => String(at).padStart(6, '0')

/** Build files, by what they are full of. */
export const largeBuilds: Readonly<Record<string, OfSize>> = {
  'plain words': prose('A word and another. '),
  'one word': prose('word'),
  paragraphs: prose('A word.\n\n'),
  lines: prose('A word and another.\n'),
  'hard breaks': prose('a\\\n'),
  'empty lines': prose('\n'),
  blanks: prose(' '),
  tabs: prose('\t'),
  headings: prose('# Again\n'),
  'headings of their own': prose((at) => `# H${at}\n`),
  days: prose((at) => `## 20${String(10 + (at % 80))}-03-07 Milling (1 h)\n\nSome words.\n\n`),
  'empty table rows': prose('|\n', '|a|b|c|d|e|f|g|h|i|j|\n|-|-|-|-|-|-|-|-|-|-|\n'),
  'a wide table': (size) =>
    build('', `|${filled(size / 3, 'a|')}\n|${filled(size / 3, '-|')}\n|${filled(size / 3, 'b|')}\n`),
  tables: prose('|a|b|\n|-|-|\n|c|d|\n\n'),
  'half tables': prose('|a|b|c\n'),
  pipes: prose('|'),
  quotes: prose('> a\n'),
  'deep quotes': prose('>'),
  'deep quotes line by line': prose((at) => `${'>'.repeat(at % 190)} a\n`),
  'list items': prose('- a\n'),
  'ordered items': prose('1. a\n'),
  'items of one list and quotations by turns': prose((at) => (at % 2 ? '> - a\n' : '- > a\n')),
  'loose items': prose('- a\n\n'),
  'task items': prose('- [x] a\n'),
  'lists in lists': prose((at) => `${'  '.repeat(at % 90)}- a\n`),
  'list signs': prose('- '),
  'list signs on lines of their own': prose('-\n'),
  'reference links': prose('[here] ', `[here]: /${'x'.repeat(200)}\n\n`),
  'links that stand for nothing': prose('[here][there] '),
  definitions: prose((at) => `[a${at}]: /b\n`),
  'definitions of several lines': prose((at) => `[a${at}]:\n/b\n'c'\n\n`),
  footnotes: prose((at) => `[^${at}]\n\n[^${at}]: A note.\n\n`),
  'calls of one footnote': prose('[^a] ', '[^a]: A note.\n\n'),
  addresses: prose('https://a.example/b '),
  'mail addresses': prose('a@b.example '),
  'mail without an end': prose('a@b.'),
  www: prose('www.a.b '),
  'underscored addresses': prose('a_b.c_d@e_f.'),
  stresses: prose('*a* '),
  'stresses that never close': prose('*a '),
  'strong that never closes': prose('**a '),
  stars: prose('*'),
  underscores: prose('_a'),
  strokes: prose('~~a '),
  'strokes closed': prose('~~a~~ '),
  backticks: prose((at) => `${'`'.repeat(1 + (at % 300))} `),
  'growing backticks': prose((at) => `${'`'.repeat(at)} `),
  code: prose('`a` '),
  brackets: prose('['),
  'closed brackets': prose('[a]'),
  'closing brackets': prose(']'),
  'open links': prose('[a](b '),
  'links in links': prose('[a](<b'),
  links: prose('[a](b.md) '),
  'links to builds': prose((at) => `[a](b${at}.md) `),
  pictures: prose('![a](b.jpg) '),
  'pictures of their own': prose((at) => `![a](b${at}.jpg)\n\n`),
  'open pictures': prose('![a'),
  'angle brackets': prose('<'),
  remarks: prose('<!--a--> '),
  'remarks that never close': prose('<!-- a\n'),
  instructions: prose('<?a '),
  declarations: prose('<!A '),
  cdata: prose('<![CDATA[a '),
  elements: prose('<b>a</b> '),
  'open elements line by line': prose('<b>\n'),
  'closing elements': prose('</b>\n'),
  'unknown elements': prose((at) => `<x${at}>a</x${at}>\n`),
  attributes: prose((at) => ` a${at}="b"`, '<b '),
  'paragraphs in HTML': prose('<p>a\n\n'),
  'tables in HTML': prose('<table><tr><td>a</td></tr></table>\n\n'),
  'misplaced cells in HTML': prose('<table>a<b>'),
  'misnested elements': prose('<b><i></b></i>'),
  'misnested links': prose('<a href="b">c<p>'),
  options: prose('<select><option>'),
  scripts: prose('<script>\na\n</script>\n\n'),
  details: prose('<details><summary>a</summary>\n\nb\n\n</details>\n\n'),
  entities: prose('&amp;'),
  'entities that are none': prose('&a'),
  backslashes: prose('\\'),
  fences: prose('```\na\n```\n'),
  'fences that never close': prose('````a\n'),
  'math and braces': prose('{a}'),
  rules: prose('***\n\n'),
  underlines: prose('a\n---\n'),
  directives: prose('::lines\n\n'),
  'directives with labels': prose('::lines[a]{b=c}\n\n'),
  'unknown directives': prose((at) => `::a${at}\n\n`),
  'directive attributes': prose((at) => ` a${at}=b`, '::lines{'),
  'open directives': prose('::lines{a='),
  'open labels': prose('::a['),
  values: prose(':value[scale.lengthMm] '),
  'values that nobody knows': prose((at) => `:value[a${at}] `),
  'open values': prose(':value['),
  colons: prose(':'),
  joiners: prose('\u200d'),
  'letters of four bytes': prose('😀'),
  fractions: prose('3/4 '),
  numbers: prose('123456789 '),
  'unknown keys': front('', (at) => `sclae-${at}: 3\n`),
  'unknown keys in one record': front('neck-2:\n', (at) => `  widht-${at}: 3\n`),
  'unknown keys in a list of records': front('parts:\n', (at) => `  - {nmae-${at}: a}\n`),
  'colons in texts': front('', (at) => `a${at}: b: c\n`),
  'one key again': front('', 'summary: a\n'),
  'a huge summary': front('summary: ', 'word '),
  'a huge title': (size) => build('').replace('Needle box', filled(size, 'word ')),
  'a huge word as a title': (size) => build('').replace('Needle box', filled(size, 'w')),
  'a huge number': front('price: ', '9'),
  'a huge length': front('ruler: ', '9'),
  'a huge mixed length': front('ruler: ', '1 '),
  'a huge date': front('started: ', '2026-'),
  'a huge choice': front('handed: ', 'left'),
  'a huge wood': (size) => build('').replace('black cherry', filled(size, 'cherry')),
  'a huge key': (size) => build(`${filled(size, 'k')}: a\n`),
  tags: front('tags: [', 'a, ', 'a]'),
  'tags of their own': front('tags: [', (at) => `a${at}, `, 'a]'),
  'a huge block text': front('summary: |\n', '  a\n'),
  'a huge folded text': front('summary: >\n', '  a\n'),
  'a huge quoted text': front('summary: "', 'a\\n', '"'),
  'an open quote': front('summary: "', 'a\n'),
  'remarks in YAML': front('', '# a\n'),
  'deep brackets': front('tags: ', '['),
  'deep brackets closed': (size) => build(`tags: ${'['.repeat(size / 2)}${']'.repeat(size / 2)}\n`),
  'deep braces': front('tags: ', '{a: '),
  'deep braces closed': (size) => build(`tags: ${'{a: '.repeat(size / 5)}${'}'.repeat(size / 5)}\n`),
  'deep lists': front('tags: ', '- '),
  'deep keys': front('tags:\n', (at) => `${' '.repeat(at % 400)}a:\n`),
  'deeper keys': (size) =>
    build(Array.from({length: Math.sqrt(2 * size)}, (_, at) => `${' '.repeat(at)}a:\n`).join('')),
  'question marks': front('', '? '),
  commas: front('tags: [', ','),
  aliases: front('tags: [&a x, ', '*a, ', '*a]'),
  'aliases of a list': front('tags: [&a [x, x, x, x, x, x, x, x, x], ', '*a, ', '*a]'),
  anchors: front('tags: [', (at) => `&a${at} x, `, 'x]'),
  'empty aliases': front('tags: [', (at) => `*a${at}, `, 'x]'),
  'merge keys': front('', '<<: a\n'),
  'tags of YAML': front('tags: [', '!a x, ', 'x]'),
  'unknown tags of YAML': front('', (at) => `a${at}: !b x\n`),
  documents: front('', '...\n'),
  'directives of YAML': front('', '%a\n'),
  'measured lines': front('measured:\n  lines:\n', (at) => `    ${at % 90}: ${at % 90}\n`),
  'measured paths': front('measured:\n', (at) => `  neck.widht${at}: 3\n`),
  'measured paths that are none': front('measured:\n', (at) => `  a.${at}: 3\n`),
  tolerances: front('tolerances:\n', (at) => `  neck.widht${at}: 3\n`),
  'accepted rules': front('accept:\n', (at) => `  bow-${at}: a\n`),
  finishes: front('finish: [', 'oil, ', 'oil]'),
  takes: front('started: 2026-01-01\ntake: [', (at) => `A${at}, `, 'A]'),
  'takes again': front('started: 2026-01-01\ntake: [', 'A, ', 'A]'),
  'a thousand takes': () => build(`started: 2026-01-01\ntake: [${filled(5000, (at) => `A${at}, `)}A]\n`),
  recordings: front('recordings: [', (at) => `a${at}.mp3, `, 'a.mp3]'),
  'a thousand recordings': () => build(`recordings: [${filled(9000, (at) => `a${at}.mp3, `)}a.mp3]\n`),
  extras: front('extras: [', 'a, ', 'a]'),
  cautions: front('cautions: [', 'a, ', 'a]'),
  costs: front('cost:\n', '  - {item: a, each: 1}\n'),
  'a thousand costs': () => build(`cost:\n${filled(24_000, '  - {item: a, each: 1}\n')}`),
  'a thousand tags': () => build(`tags: [${filled(5000, (at) => `a${at}, `)}a]\n`),
  'a thousand huge tags': (size) =>
    build(`tags: [${Array.from({length: 999}, () => 'a'.repeat(size / 1000)).join(', ')}]\n`),
  'a thousand cautions': (size) =>
    build(`cautions: [${Array.from({length: 999}, () => 'a '.repeat(size / 2000)).join(', ')}]\n`),
  played: front('played:\n', '  - {on: 2026-03-16, remark: a}\n'),
  scores: () =>
    build(
      `played:\n${filled(
        99 * 90,
        (at) => `  - {scores: {${[0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map((n) => `a${at}-${n}: 3`).join(', ')}}}\n`,
      )
        .split('\n')
        .slice(0, 99)
        .join('\n')}\n`,
    ),
  screws: () => {
    const hundred = (step: number) => Array.from({length: 100}, (_, at) => at * step).join(', ')
    const row = `  - {size: 6, length: 1, at: [${hundred(0.2)}], off: [${hundred(0.01)}], into: neck}\n`
    return build(`screws:\n${row.repeat(100)}`)
  },
  'screws in one': () => {
    const hundred = (step: number) => Array.from({length: 100}, (_, at) => at * step).join(', ')
    return build(
      `screws:\n  - {size: 6, length: 1, at: [${hundred(0.2)}], off: [${hundred(0.01)}], into: neck}\n`,
    )
  },
  'screws down': () => {
    const many = (count: number, step: number) => Array.from({length: count}, (_, at) => at * step).join(', ')
    const row = `  - {size: 6, length: 1, at: [${many(100, 0.2)}], off: [${many(100, 0.01)}], down: [${many(20, 0.1)}], into: neck}\n`
    return build(`screws:\n${row.repeat(100)}`)
  },
  'screws by the piece': front(
    'screws:\n',
    (at) => `  - {size: 6, length: 1, at: [${at % 30}], off: [0], into: neck}\n`,
  ),
  'a hundred screws': () =>
    build(
      `screws:\n${filled(5000, (at) => `  - {size: 6, length: 1, at: [${at % 30}], off: [0], into: neck}\n`)}`,
    ),
  holes: () =>
    build('').replace(
      'box: 10 1/8 x 7 x 2',
      `box:\n  length: 10\n  width: 7\n  depth: 2\n  holes:\n${Array.from({length: 200}, (_, at) => `    - {diameter: 1, along: ${(at % 20) / 2}, off: ${(at % 13) / 4}}\n`).join('')}`.trimEnd(),
    ),
  blocks: () =>
    build('').replace(
      'box: 10 1/8 x 7 x 2',
      `box:\n  length: 10\n  width: 7\n  depth: 2\n  blocks:\n${Array.from({length: 40}, (_, at) => `    - {wood: beech, along: ${(at % 20) / 2}, off: 0, length: 1, width: 1, thickness: 1}\n`).join('')}`.trimEnd(),
    ),
  parts: front('parts:\n', (at) => `  - {name: a${at}, wood: ash, length: 10, width: 2, thickness: 1}\n`),
  'parts by count': () =>
    build(
      'parts:\n  - {name: a, wood: ash, length: 10, width: 2, thickness: 1, count: 9999}\nstock:\n  - {wood: ash, length: 96, width: 8, thickness: 1, count: 9999}\n',
    ),
  'parts and stock': () =>
    build(
      `parts:\n${Array.from({length: 190}, (_, at) => `  - {name: a${at}, wood: ash, length: ${5 + (at % 17)}, width: ${1 + (at % 7) / 4}, thickness: 1}\n`).join('')}stock:\n${Array.from({length: 900}, (_, at) => `  - {wood: ash, length: ${20 + (at % 90)}, width: ${2 + (at % 9)}, thickness: 1}\n`).join('')}`,
    ),
  'parts and boards of sizes of their own': () =>
    build(
      `parts:\n${Array.from({length: 1000}, (_, at) => `  - {name: a${at}, wood: ash, length: ${5 + ((at * 7919) % 1000) / 100}, width: ${1 + ((at * 104_729) % 1000) / 700}, thickness: 1}\n`).join('')}stock:\n${Array.from({length: 1000}, (_, at) => `  - {wood: ash, length: ${20 + (at % 90)}, width: ${2 + ((at * 31) % 9)}, thickness: 1}\n`).join('')}`,
    ),
  stock: front('stock:\n', (at) => `  - {wood: ash, length: ${10 + (at % 90)}, width: 8, thickness: 1}\n`),
  'stock of woods of their own': front(
    'stock:\n',
    (at) => `  - {wood: ash${at}, length: 10, width: 8, thickness: 1}\n`,
  ),
  laminations: () =>
    build('').replace(
      'wood: black cherry',
      `laminations: [${Array.from({length: 20}, () => '{wood: ash, thickness: 1/16, strips: 20}').join(', ')}]`,
    ),
  'own words everywhere': (size) =>
    build(`summary: ${'__proto__ '.repeat(size / 20)}\n`, filled(size / 2, 'constructor ')),
}

/** Racks and settings, by what they are full of. */
export const largeSettings: Readonly<Record<string, {file: string; text: OfSize}>> = {
  'a rack': {
    file: 'rack.yaml',
    text: (size) =>
      filled(size * 4, (at) => `- {id: P${digits(at)}, wood: ash, length: 96, width: 8, thickness: 1}\n`),
  },
  'a rack of one piece again': {
    file: 'rack.yaml',
    text: (size) => filled(size * 4, '- {id: A1, wood: ash, length: 96, width: 8, thickness: 1}\n'),
  },
  'a rack of unknown keys': {
    file: 'rack.yaml',
    text: (size) => filled(size * 4, (at) => `- {idd: P${at}, wood: ash}\n`),
  },
  'a rack of brackets': {file: 'rack.yaml', text: (size) => '['.repeat(size * 4)},
  'a rack of ten thousand': {
    file: 'rack.yaml',
    text: () =>
      filled(9900 * 58, (at) => `- {id: P${digits(at)}, wood: ash, length: 96, width: 8, thickness: 1}\n`),
  },
  'settings of unknown keys': {
    file: 'journal.yaml',
    text: (size) => filled(size * 4, (at) => `titel-${at}: a\n`),
  },
  'a huge title of the journal': {
    file: 'journal.yaml',
    text: (size) => `title: ${filled(size * 4, 'word ')}\n`,
  },
}
