// Marks how the builds of the comparison differ from a chosen one.
const table = document.querySelector<HTMLTableElement>('.compare table')
const rows = [...(table?.tBodies[0]?.rows ?? [])]

/** Write a difference in the chosen build's units; a sign says its direction. */
function difference(cell: HTMLElement, chosen: HTMLElement, inInches: boolean): string {
  const [mm, other] = [cell.dataset.mm, chosen.dataset.mm]
  if (mm !== undefined && other !== undefined) {
    const by = Number(mm) - Number(other)
    if (Math.abs(by) < 0.05) return ''
    return signed(inInches ? by / 25.4 : by, inInches ? 3 : 1, inInches ? ' in' : ' mm')
  }
  const [number, another] = [cell.dataset.number, chosen.dataset.number]
  if (number !== undefined && another !== undefined) {
    const by = Number(number) - Number(another)
    return by === 0 ? '' : signed(by, Number.isInteger(by) ? 0 : 1, '')
  }
  const [words, chosenWords] = [cell.dataset.words, chosen.dataset.words]
  return words !== undefined && chosenWords !== undefined && words !== chosenWords ? 'differs' : ''
}

function signed(by: number, digits: number, unit: string): string {
  return `${by < 0 ? '−' : '+'}${Number(Math.abs(by).toFixed(digits))}${unit}`
}

function compareWith(chosen: HTMLTableRowElement | undefined): void {
  for (const row of rows) {
    row.toggleAttribute('data-chosen', row === chosen)
    for (const [at, cell] of [...row.cells].entries()) {
      cell.querySelector('.difference')?.remove()
      const other = chosen?.cells[at]
      if (at === 0 || !other || row === chosen) continue
      const by = difference(cell, other, chosen.dataset.units === 'in')
      if (!by) continue
      const mark = document.createElement('small')
      mark.className = 'difference'
      mark.textContent = by
      cell.append(mark)
    }
  }
}

document.querySelector<HTMLSelectElement>('.controls select')?.addEventListener('change', (event) => {
  const slug = (event.target as HTMLSelectElement).value
  compareWith(rows.find((row) => row.dataset.build === slug))
})
