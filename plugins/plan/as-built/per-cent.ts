/** Say a part of a whole without its sign: -0.0603 is `6.0 %`. */
export const perCent = (part: number): string => `${(Math.abs(part) * 100).toFixed(1)} %`
