/** The pages that every page leads to, in order: above the page, and below it. */
export const navigation = {
  above: [
    ['/', 'Builds'],
    ['/side-by-side/', 'Side by side'],
    ['/rack/', 'Rack'],
    ['/planned-and-measured/', 'Planned and measured'],
  ],
  below: [
    ['/rules/', 'What is checked'],
    ['/woods/', 'Woods'],
    ['/sources/', 'Sources'],
    ['/feed.xml', 'Feed'],
  ],
} as const satisfies Record<string, readonly (readonly [string, string])[]>
