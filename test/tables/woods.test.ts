import {readFileSync} from 'node:fs'
import {describe, expect, test} from 'vitest'
import {movementOf, woodFacts, woodOf} from '../../plugins/plan/kit/woods.ts'
import {type LooseWood, looseWoods, type WoodRow, woodSources, woods} from '../../plugins/tables/woods.ts'

const rows: Readonly<Record<string, WoodRow>> = woods

/** Read a table of published values: lines with a hash say where they come from. */
function published(name: string): Record<string, string>[] {
  const text = readFileSync(new URL(`wood-values/${name}.tsv`, import.meta.url), 'utf8')
  const [head, ...lines] = text.split('\n').filter((line) => line && !line.startsWith('#'))
  const columns = head!.split('\t')
  return lines.map((line) => Object.fromEntries(line.split('\t').map((cell, i) => [columns[i]!, cell])))
}

const psiMpa = 0.006894757293168361
const numbers = (text: string) => text.split(/[/ ]/).map(Number)

describe('woods grown in the USA: Wood Handbook, FPL-GTR-190, Tables 5-3a, 4-3 and 13-5', () => {
  test.each(published('grown-in-the-usa'))('$wood', (line) => {
    const row = rows[line.wood!]!
    expect(row.g12).toBe(Number(line.g12))
    expect(row.morMpa).toBe(Number(line['mor MPa']))
    expect(Math.abs(row.morMpa! - Number(line['mor psi']) * psiMpa)).toBeLessThan(0.9)
    expect(row.moeMpa).toBe(Number(line['moe MPa']))
    expect(Math.abs(row.moeMpa - Number(line['moe Mpsi']) * 1e6 * psiMpa)).toBeLessThan(60)
    expect(row.hardnessN).toBe(line['hardness N'] === '-' ? undefined : Number(line['hardness N']))
    expect(row.shearMpa).toBe(line['shear MPa'] === '-' ? undefined : Number(line['shear MPa']))
    expect(row.shrinkPercent).toEqual(line['shrinkage %'] === '-' ? undefined : numbers(line['shrinkage %']!))
    const moves = movementOf(row)
    if (line.movement === '-') return
    for (const [i, printed] of numbers(line.movement!).entries())
      expect(Math.abs(moves![i as 0 | 1] - printed)).toBeLessThanOrEqual(
        line['movement from'] === 'rule' ? 6e-6 : 0,
      )
  })
})

describe('imported woods: Wood Handbook, Tables 5-5b and 4-4', () => {
  test.each(published('imported'))('$wood', (line) => {
    const row = rows[line.wood!]!
    const gBasic = Number(line['g green volume'])
    expect(row.gBasic).toBe(gBasic)
    expect(row.g12).toBe(Number(line.g12))
    // FPL-GTR-282 Eq. 4-13 at 12 % moisture.
    expect(Math.abs(row.g12 - gBasic / (1 - 0.265 * gBasic * (1 - 12 / 30)))).toBeLessThan(0.006)
    expect(Math.abs(row.morMpa! - Number(line['mor psi']) * psiMpa)).toBeLessThan(0.6)
    expect(Math.abs(row.moeMpa - Number(line['moe Mpsi']) * 1e6 * psiMpa)).toBeLessThan(1)
    if (line['hardness lbf'] !== '-')
      expect(Math.abs(row.hardnessN! - Number(line['hardness lbf']) * 4.4482216152605)).toBeLessThan(5.1)
    expect(row.shrinkPercent).toEqual(line['shrinkage %'] === '-' ? undefined : numbers(line['shrinkage %']!))
  })
})

test('every row of the two tables is there, and no row is of neither', () => {
  const listed = new Set(
    [...published('grown-in-the-usa'), ...published('imported')].map((line) => line.wood),
  )
  const others = [
    'african padauk',
    'wenge',
    'cocobolo',
    'ebony',
    'birch plywood',
    'plywood',
    'hardboard',
    'mdf',
  ]
  expect(new Set(Object.keys(woods))).toEqual(new Set([...listed, ...others]))
})

// USDA Forest Products Laboratory, Wood Technical Fact Sheet, Pterocarpus soyauxii: 42 to 51 lb/ft³ air-dry, 1.56 and
// 1.75 Mpsi, shrinkage 3.3, 5.2 and 7.6 %.
test('padauk is a range', () => {
  const {spread, shrinkPercent} = rows['african padauk']!
  const lbFt3 = 0.45359237 / 0.3048 ** 3
  for (const [i, lb] of [42, 51].entries())
    expect(Math.abs(spread!.densityKgM3[i as 0 | 1] - lb * lbFt3)).toBeLessThan(0.6)
  for (const [i, mpsi] of [1.56, 1.75].entries())
    expect(Math.abs(spread!.moeMpa[i as 0 | 1] - mpsi * 1e6 * psiMpa)).toBeLessThan(1)
  expect(shrinkPercent).toEqual([3.3, 5.2, 7.6])
})

// FPL-GTR-282 Eq. 4-14 and Table 4-6a: G 0.60 at 12 % weighs 672 kg/m³.
test('density at 12 % moisture', () => {
  expect(woodOf('white ash')!.densityKgM3).toBeCloseTo(672, 9)
})

// Wood Handbook Table 13-5, printed: the rule 1/(3000/S − 20) gives the same to five places.
test.each([
  ['sugar maple', 0.00165, 0.00353],
  ['american beech', 0.0019, 0.00431],
  ['yellow birch', 0.00256, 0.00338],
  ['black walnut', 0.0019, 0.00274],
  ['black cherry', 0.00126, 0.00248],
  ['white ash', 0.00169, 0.00274],
  ['american basswood', 0.0023, 0.0033],
  ['red maple', 0.00137, 0.00289],
])('%s moves as its shrinkage has it', (name, radial, tangential) => {
  const {shrinkPercent} = rows[name]!
  const [r, t] = movementOf({shrinkPercent: shrinkPercent!})!
  expect(Math.abs(r - radial)).toBeLessThan(6e-6)
  expect(Math.abs(t - tangential)).toBeLessThan(6e-6)
})

describe('names', () => {
  test('no name stands for two woods', () => {
    const tables: Readonly<Record<string, WoodRow | LooseWood>>[] = [woods, looseWoods]
    const all = tables.flatMap((table) =>
      Object.entries(table).flatMap(([row, {others = []}]) => [
        row,
        ...others.filter((one) => fold(one) !== fold(row)),
      ]),
    )
    expect(all.map(fold).sort()).toEqual([...new Set(all.map(fold))].sort())
  })
  const fold = (name: string) => name.replace(/-/g, ' ')

  test('case, hyphens and blanks do not matter', () => {
    for (const name of ['Yellow Poplar', 'yellow-poplar', '  yellow  poplar ', 'TULIP POPLAR'])
      expect(woodOf(name)?.row).toBe('yellow-poplar')
  })

  test.each(['hardwood', 'softwood', 'maple', 'oak', 'pine', 'poplar', 'cedar', 'plywood', 'unknown'])(
    '%s is a range round its middle',
    (name) => {
      const {densityKgM3, eMpa, range} = woodOf(name)!
      expect(range!.densityKgM3[0]).toBeLessThan(densityKgM3)
      expect(range!.densityKgM3[1]).toBeGreaterThan(densityKgM3)
      expect(range!.eMpa[0]).toBeLessThan(eMpa)
      expect(range!.eMpa[1]).toBeGreaterThan(eMpa)
    },
  )

  // Wood Handbook, FPL-GTR-190, Table 5-3a: southern red oak 75 MPa, quaking aspen 58 MPa, eastern white pine 59 MPa.
  test.each([
    ['oak', 'southern red oak', 75],
    ['poplar', 'quaking aspen', 58],
    ['white pine', 'eastern white pine', 59],
  ])('%s is as strong as the weakest that it may mean, %s', (name, weakest, morMpa) => {
    expect(woodOf(name)).toMatchObject({weakest, morMpa})
  })

  test('a loose name spans the rows it may mean', () => {
    const maples = ['sugar maple', 'black maple', 'red maple', 'silver maple', 'bigleaf maple'].map(
      (name) => rows[name]!,
    )
    expect(woodOf('maple')!.range!.eMpa).toEqual([
      Math.min(...maples.map((row) => row.moeMpa)),
      Math.max(...maples.map((row) => row.moeMpa)),
    ])
  })

  test('a wood of the build’s own', () => {
    const own = {density: {kgM3: 480}, stiffness: {mpa: 9100}}
    expect(woodOf('bog oak', own)).toMatchObject({row: 'bog oak', densityKgM3: 480, eMpa: 9100})
    expect(woodOf('maple', own)).toMatchObject({row: 'maple', densityKgM3: 480, eMpa: 9100})
    expect(woodOf('maple', own)!.range).toBeUndefined()
    expect(woodOf('bog oak', {density: {kgM3: 480}})).toBeUndefined()
    expect(woodOf('bog oak')).toBeUndefined()
    expect(woodOf(undefined)).toBeUndefined()
  })
})

test('every row has a source, and values that wood can have', () => {
  for (const [name, {densityKgM3, eMpa, g12, moves}] of woodFacts) {
    expect(densityKgM3, name).toBeGreaterThan(100)
    expect(densityKgM3, name).toBeLessThan(1300)
    expect(eMpa, name).toBeGreaterThan(3000)
    expect(eMpa, name).toBeLessThan(25_000)
    expect(densityKgM3).toBeCloseTo(1120 * g12, 9)
    if (moves) expect(moves[0], name).toBeLessThanOrEqual(moves[1])
  }
  for (const row of Object.values(rows)) expect(woodSources[row.source]).toBeTruthy()
})
