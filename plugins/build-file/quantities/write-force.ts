const newtonsPerPoundForce = 4.4482216152605

/** Write a force (N) as plain text: `19.8 lbf (88 N)`, or `88 N` in a millimetre build. NIST SP 811, appendix B. */
export function writeForce(n: number, units: 'in' | 'mm'): string {
  const newtons = `${n.toFixed(n < 10 ? 1 : 0)} N`
  return units === 'in' ? `${(n / newtonsPerPoundForce).toFixed(1)} lbf (${newtons})` : newtons
}
