/**
 * Count board feet: thickness × width × length in inches over 144; stock under 1 in counts as 1 in thick.
 * Example: 1 × 9 × 96 in is 6. Source: American Hardwood Export Council on the NHLA rules.
 */
export function boardFeet(size: {lengthMm: number; widthMm: number; thicknessIn: number}): number {
  return (Math.max(size.thicknessIn, 1) * (size.widthMm / 25.4) * (size.lengthMm / 25.4)) / 144
}
