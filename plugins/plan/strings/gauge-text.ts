/** Write a gauge of so many inches as a maker would in this build: `.030w`, or `.030 in w` where millimetres are meant. */
export function gaugeText(gaugeIn: number, wound: boolean, units: 'in' | 'mm'): string {
  const figure = gaugeIn.toFixed(4).replace(/^0/, '').replace(/0$/, '')
  return units === 'in' ? figure + (wound ? 'w' : '') : `${figure} in${wound ? ' w' : ''}`
}
