/**
 * The wood table: species averages of clear, straight-grained wood at 12 % moisture.
 *
 * Row: `g12` ovendry mass over volume at 12 % moisture, as a multiple of water; `gBasic` the same over green volume,
 * where that is what was published; bending strength and stiffness along the grain (the apparent one, of the bending
 * test) in MPa; side hardness in N; shear along the grain in MPa; `shrinkPercent` green to ovendry, radial,
 * tangential and by volume; `moves` the printed change of width per 1 % of moisture, radial and tangential, between
 * 6 and 14 %; where it is not printed it follows from the shrinkage. `spread` is low and high where sources differ.
 * `trust`: solid, middling (one copy of the document, or a value confirmed by another) or weak (a secondary page, or
 * from memory).
 */
export const woodSources = {
  handbook:
    'USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), Table 5-3a; shrinkage Table 4-3, movement Table 13-5',
  'handbook imported':
    'Wood Handbook, FPL-GTR-190 (2010) and FPL-GTR-282 (2021), Table 5-5b; shrinkage Table 4-4; specific gravity at 12 % by Eq. 4-13',
  padauk: 'USDA Forest Products Laboratory, Wood Technical Fact Sheet on Pterocarpus soyauxii (Chudnoff)',
  wenge: 'a research institute’s data sheet and another secondary page, which differ by 15 %',
  cocobolo: 'from memory; very dense and oily, and values vary from tree to tree',
  ebony: 'from memory; very dense, and values vary from tree to tree',
  'birch plywood':
    'Handbook of Finnish Plywood, Finnish Forest Industries Federation (2002), mean values along the face grain, 18 to 4 mm; from memory',
  plywood:
    'from memory: softwood construction sheets to birch throughout; strength Wood Handbook, Table 12-1, from memory',
  board: 'USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), Table 12-1, from memory',
} as const

export type WoodTrust = 'solid' | 'middling' | 'weak'

export interface WoodRow {
  latin?: string
  others?: readonly string[]
  kind: 'hardwood' | 'softwood' | 'sheet'
  /** Glued of plies that cross: stiffer along the face grain than across it. */
  plies?: true
  gBasic?: number
  g12: number
  morMpa?: number
  moeMpa: number
  hardnessN?: number
  shearMpa?: number
  shrinkPercent?: readonly [radial: number, tangential: number, volumetric?: number]
  shrinkTrust?: WoodTrust
  moves?: readonly [radial: number, tangential: number]
  spread?: {densityKgM3: readonly [number, number]; moeMpa: readonly [number, number]}
  source: keyof typeof woodSources
  trust: WoodTrust
  /** Whether it may cross a border freely; the Appendices as of late 2024, not legal advice. */
  trade?: string
}

// biome-ignore format: a line each, as in the tables they come from
export const woods = {
  'red alder': {latin: 'Alnus rubra', others: ['alder'], kind: 'hardwood', g12: 0.41, morMpa: 68, moeMpa: 9500, hardnessN: 2600, shearMpa: 7.4, shrinkPercent: [4.4, 7.3, 12.6], shrinkTrust: 'solid', moves: [0.00151, 0.00256], source: 'handbook', trust: 'solid'},
  'black ash': {latin: 'Fraxinus nigra', kind: 'hardwood', g12: 0.49, morMpa: 87, moeMpa: 11000, hardnessN: 3800, shearMpa: 10.8, shrinkPercent: [5, 7.8, 15.2], shrinkTrust: 'solid', moves: [0.00172, 0.00274], source: 'handbook', trust: 'solid'},
  'green ash': {latin: 'Fraxinus pennsylvanica', kind: 'hardwood', g12: 0.56, morMpa: 97, moeMpa: 11400, hardnessN: 5300, shearMpa: 13.2, shrinkPercent: [4.6, 7.1, 12.5], shrinkTrust: 'solid', moves: [0.00169, 0.00274], source: 'handbook', trust: 'solid'},
  'white ash': {latin: 'Fraxinus americana', kind: 'hardwood', g12: 0.6, morMpa: 103, moeMpa: 12000, hardnessN: 5900, shearMpa: 13.2, shrinkPercent: [4.9, 7.8, 13.3], shrinkTrust: 'solid', moves: [0.00169, 0.00274], source: 'handbook', trust: 'solid'},
  'quaking aspen': {latin: 'Populus tremuloides', others: ['aspen', 'trembling aspen'], kind: 'hardwood', g12: 0.38, morMpa: 58, moeMpa: 8100, hardnessN: 1600, shearMpa: 5.9, shrinkPercent: [3.5, 6.7, 11.5], shrinkTrust: 'solid', moves: [0.00119, 0.00234], source: 'handbook', trust: 'solid'},
  'american basswood': {latin: 'Tilia americana', others: ['basswood', 'american linden', 'linden'], kind: 'hardwood', g12: 0.37, morMpa: 60, moeMpa: 10100, hardnessN: 1800, shearMpa: 6.8, shrinkPercent: [6.6, 9.3, 15.8], shrinkTrust: 'solid', moves: [0.0023, 0.0033], source: 'handbook', trust: 'solid'},
  'american beech': {latin: 'Fagus grandifolia', others: ['beech'], kind: 'hardwood', g12: 0.64, morMpa: 103, moeMpa: 11900, hardnessN: 5800, shearMpa: 13.9, shrinkPercent: [5.5, 11.9, 17.2], shrinkTrust: 'solid', moves: [0.0019, 0.00431], source: 'handbook', trust: 'solid'},
  'paper birch': {latin: 'Betula papyrifera', others: ['white birch'], kind: 'hardwood', g12: 0.55, morMpa: 85, moeMpa: 11000, hardnessN: 4000, shearMpa: 8.3, shrinkPercent: [6.3, 8.6, 16.2], shrinkTrust: 'solid', moves: [0.00219, 0.00304], source: 'handbook', trust: 'solid'},
  'sweet birch': {latin: 'Betula lenta', others: ['black birch', 'cherry birch'], kind: 'hardwood', g12: 0.65, morMpa: 117, moeMpa: 15000, hardnessN: 6500, shearMpa: 15.4, shrinkPercent: [6.5, 9, 15.6], shrinkTrust: 'solid', moves: [0.00256, 0.00338], source: 'handbook', trust: 'solid'},
  'yellow birch': {latin: 'Betula alleghaniensis', kind: 'hardwood', g12: 0.62, morMpa: 114, moeMpa: 13900, hardnessN: 5600, shearMpa: 13, shrinkPercent: [7.3, 9.5, 16.8], shrinkTrust: 'solid', moves: [0.00256, 0.00338], source: 'handbook', trust: 'solid'},
  butternut: {latin: 'Juglans cinerea', others: ['white walnut'], kind: 'hardwood', g12: 0.38, morMpa: 56, moeMpa: 8100, hardnessN: 2200, shearMpa: 8.1, shrinkPercent: [3.4, 6.4, 10.6], shrinkTrust: 'solid', moves: [0.00116, 0.00223], source: 'handbook', trust: 'solid'},
  'black cherry': {latin: 'Prunus serotina', others: ['cherry', 'american cherry'], kind: 'hardwood', g12: 0.5, morMpa: 85, moeMpa: 10300, hardnessN: 4200, shearMpa: 11.7, shrinkPercent: [3.7, 7.1, 11.5], shrinkTrust: 'solid', moves: [0.00126, 0.00248], source: 'handbook', trust: 'solid'},
  'american chestnut': {latin: 'Castanea dentata', others: ['chestnut'], kind: 'hardwood', g12: 0.43, morMpa: 59, moeMpa: 8500, hardnessN: 2400, shearMpa: 7.4, shrinkPercent: [3.4, 6.7, 11.6], shrinkTrust: 'solid', moves: [0.00116, 0.00234], source: 'handbook', trust: 'solid'},
  'eastern cottonwood': {latin: 'Populus deltoides', others: ['cottonwood'], kind: 'hardwood', g12: 0.4, morMpa: 59, moeMpa: 9400, hardnessN: 1900, shearMpa: 6.4, shrinkPercent: [3.9, 9.2, 13.9], shrinkTrust: 'solid', moves: [0.00133, 0.00327], source: 'handbook', trust: 'solid'},
  'american elm': {latin: 'Ulmus americana', others: ['elm', 'white elm'], kind: 'hardwood', g12: 0.5, morMpa: 81, moeMpa: 9200, hardnessN: 3700, shearMpa: 10.4, shrinkPercent: [4.2, 9.5, 14.6], shrinkTrust: 'solid', moves: [0.00144, 0.00338], source: 'handbook', trust: 'solid'},
  hackberry: {latin: 'Celtis occidentalis', kind: 'hardwood', g12: 0.53, morMpa: 76, moeMpa: 8200, hardnessN: 3900, shearMpa: 11, shrinkPercent: [4.8, 8.9, 13.8], shrinkTrust: 'solid', moves: [0.00165, 0.00315], source: 'handbook', trust: 'solid'},
  pecan: {latin: 'Carya illinoinensis', others: ['pecan hickory'], kind: 'hardwood', g12: 0.66, morMpa: 94, moeMpa: 11900, hardnessN: 8100, shearMpa: 14.3, shrinkPercent: [4.9, 8.9, 13.6], shrinkTrust: 'solid', moves: [0.00169, 0.00315], source: 'handbook', trust: 'solid'},
  'mockernut hickory': {latin: 'Carya alba', kind: 'hardwood', g12: 0.72, morMpa: 132, moeMpa: 15300, hardnessN: 8800, shearMpa: 12, shrinkPercent: [7.7, 11, 17.8], shrinkTrust: 'solid', source: 'handbook', trust: 'solid'},
  'pignut hickory': {latin: 'Carya glabra', kind: 'hardwood', g12: 0.75, morMpa: 139, moeMpa: 15600, hardnessN: 9500, shearMpa: 14.8, shrinkPercent: [7.2, 11.5, 17.9], shrinkTrust: 'solid', source: 'handbook', trust: 'solid'},
  'shagbark hickory': {latin: 'Carya ovata', kind: 'hardwood', g12: 0.72, morMpa: 139, moeMpa: 14900, hardnessN: 8400, shearMpa: 16.8, shrinkPercent: [7, 10.5, 16.7], shrinkTrust: 'weak', source: 'handbook', trust: 'solid'},
  'shellbark hickory': {latin: 'Carya laciniosa', kind: 'hardwood', g12: 0.69, morMpa: 125, moeMpa: 13000, hardnessN: 8100, shearMpa: 14.5, source: 'handbook', trust: 'solid'},
  'black locust': {latin: 'Robinia pseudoacacia', others: ['locust', 'robinia'], kind: 'hardwood', g12: 0.69, morMpa: 134, moeMpa: 14100, hardnessN: 7600, shearMpa: 17.1, moves: [0.00158, 0.00252], source: 'handbook', trust: 'solid'},
  'bigleaf maple': {latin: 'Acer macrophyllum', others: ['oregon maple', 'western maple'], kind: 'hardwood', g12: 0.48, morMpa: 74, moeMpa: 10000, hardnessN: 3800, shearMpa: 11.9, moves: [0.00126, 0.00248], source: 'handbook', trust: 'solid'},
  'black maple': {latin: 'Acer nigrum', kind: 'hardwood', g12: 0.57, morMpa: 92, moeMpa: 11200, hardnessN: 5200, shearMpa: 12.5, moves: [0.00165, 0.00353], source: 'handbook', trust: 'solid'},
  'red maple': {latin: 'Acer rubrum', kind: 'hardwood', g12: 0.54, morMpa: 92, moeMpa: 11300, hardnessN: 4200, shearMpa: 12.8, shrinkPercent: [4, 8.2, 12.6], shrinkTrust: 'middling', moves: [0.00137, 0.00289], source: 'handbook', trust: 'solid'},
  'silver maple': {latin: 'Acer saccharinum', kind: 'hardwood', g12: 0.47, morMpa: 61, moeMpa: 7900, hardnessN: 3100, shearMpa: 10.2, shrinkPercent: [3, 7.2, 12], shrinkTrust: 'middling', moves: [0.00102, 0.00252], source: 'handbook', trust: 'solid'},
  'sugar maple': {latin: 'Acer saccharum', others: ['hard maple', 'rock maple'], kind: 'hardwood', g12: 0.63, morMpa: 109, moeMpa: 12600, hardnessN: 6400, shearMpa: 16.1, shrinkPercent: [4.8, 9.9, 14.7], shrinkTrust: 'middling', moves: [0.00165, 0.00353], source: 'handbook', trust: 'solid'},
  'black oak': {latin: 'Quercus velutina', kind: 'hardwood', g12: 0.61, morMpa: 96, moeMpa: 11300, hardnessN: 5400, shearMpa: 13.2, moves: [0.00123, 0.0023], source: 'handbook', trust: 'solid'},
  'northern red oak': {latin: 'Quercus rubra', kind: 'hardwood', g12: 0.63, morMpa: 99, moeMpa: 12500, hardnessN: 5700, shearMpa: 12.3, shrinkPercent: [4, 8.6, 13.7], shrinkTrust: 'middling', moves: [0.00158, 0.00369], source: 'handbook', trust: 'solid'},
  'southern red oak': {latin: 'Quercus falcata', kind: 'hardwood', g12: 0.59, morMpa: 75, moeMpa: 10300, hardnessN: 4700, shearMpa: 9.6, shrinkPercent: [4.7, 11.3, 16.1], shrinkTrust: 'weak', source: 'handbook', trust: 'solid'},
  'white oak': {latin: 'Quercus alba', others: ['american white oak'], kind: 'hardwood', g12: 0.68, morMpa: 105, moeMpa: 12300, hardnessN: 6000, shearMpa: 13.8, shrinkPercent: [5.6, 10.5, 16.3], shrinkTrust: 'solid', moves: [0.0018, 0.00365], source: 'handbook', trust: 'solid'},
  sassafras: {latin: 'Sassafras albidum', kind: 'hardwood', g12: 0.46, morMpa: 62, moeMpa: 7700, shearMpa: 8.5, shrinkPercent: [4, 6.2, 10.3], shrinkTrust: 'solid', moves: [0.00137, 0.00216], source: 'handbook', trust: 'solid'},
  sweetgum: {latin: 'Liquidambar styraciflua', others: ['red gum', 'sweet gum'], kind: 'hardwood', g12: 0.52, morMpa: 86, moeMpa: 11300, hardnessN: 3800, shearMpa: 11, shrinkPercent: [5.3, 10.2, 15.8], shrinkTrust: 'solid', moves: [0.00183, 0.00365], source: 'handbook', trust: 'solid'},
  'american sycamore': {latin: 'Platanus occidentalis', others: ['sycamore', 'buttonwood'], kind: 'hardwood', g12: 0.49, morMpa: 69, moeMpa: 9800, hardnessN: 3400, shearMpa: 10.1, shrinkPercent: [5, 8.4, 14.1], shrinkTrust: 'solid', moves: [0.00172, 0.00296], source: 'handbook', trust: 'solid'},
  'black walnut': {latin: 'Juglans nigra', others: ['walnut', 'american walnut'], kind: 'hardwood', g12: 0.55, morMpa: 101, moeMpa: 11600, hardnessN: 4500, shearMpa: 9.4, shrinkPercent: [5.5, 7.8, 12.8], shrinkTrust: 'solid', moves: [0.0019, 0.00274], source: 'handbook', trust: 'solid'},
  'black willow': {latin: 'Salix nigra', others: ['willow'], kind: 'hardwood', g12: 0.39, morMpa: 54, moeMpa: 7000, shearMpa: 8.6, shrinkPercent: [3.3, 8.7, 13.9], shrinkTrust: 'solid', source: 'handbook', trust: 'solid'},
  'yellow-poplar': {latin: 'Liriodendron tulipifera', others: ['tulip poplar', 'tuliptree'], kind: 'hardwood', g12: 0.42, morMpa: 70, moeMpa: 10900, hardnessN: 2400, shearMpa: 8.2, shrinkPercent: [4.6, 8.2, 12.7], shrinkTrust: 'solid', source: 'handbook', trust: 'solid'},
  baldcypress: {latin: 'Taxodium distichum', others: ['cypress', 'bald cypress'], kind: 'softwood', g12: 0.46, morMpa: 73, moeMpa: 9900, hardnessN: 2300, shearMpa: 6.9, source: 'handbook', trust: 'solid'},
  'eastern redcedar': {latin: 'Juniperus virginiana', others: ['eastern red cedar', 'aromatic cedar'], kind: 'softwood', g12: 0.47, morMpa: 61, moeMpa: 6100, hardnessN: 4000, shrinkPercent: [3.1, 4.7, 7.8], shrinkTrust: 'solid', source: 'handbook', trust: 'solid'},
  'incense cedar': {latin: 'Calocedrus decurrens', kind: 'softwood', g12: 0.37, morMpa: 55, moeMpa: 7200, hardnessN: 2100, shearMpa: 6.1, shrinkPercent: [3.3, 5.2, 7.7], shrinkTrust: 'solid', source: 'handbook', trust: 'solid'},
  'northern white-cedar': {latin: 'Thuja occidentalis', others: ['northern white cedar', 'white cedar', 'eastern white cedar'], kind: 'softwood', g12: 0.31, morMpa: 45, moeMpa: 5500, hardnessN: 1400, shearMpa: 5.9, shrinkPercent: [2.2, 4.9, 7.2], shrinkTrust: 'solid', source: 'handbook', trust: 'solid'},
  'port-orford-cedar': {latin: 'Chamaecyparis lawsoniana', others: ['port orford cedar'], kind: 'softwood', g12: 0.43, morMpa: 88, moeMpa: 11700, hardnessN: 2800, shearMpa: 9.4, shrinkPercent: [4.6, 6.9, 10.1], shrinkTrust: 'solid', source: 'handbook', trust: 'solid'},
  'western redcedar': {latin: 'Thuja plicata', others: ['western red cedar'], kind: 'softwood', g12: 0.32, morMpa: 51.7, moeMpa: 7700, hardnessN: 1600, shearMpa: 6.8, shrinkPercent: [2.4, 5, 6.8], shrinkTrust: 'solid', source: 'handbook', trust: 'solid'},
  'yellow-cedar': {latin: 'Callitropsis nootkatensis', others: ['yellow cedar', 'alaska cedar'], kind: 'softwood', g12: 0.44, morMpa: 77, moeMpa: 9800, hardnessN: 2600, shearMpa: 7.8, shrinkPercent: [2.8, 6, 9.2], shrinkTrust: 'solid', source: 'handbook', trust: 'solid'},
  'douglas-fir': {latin: 'Pseudotsuga menziesii', others: ['douglas fir', 'coast douglas fir', 'oregon pine'], kind: 'softwood', g12: 0.48, morMpa: 85, moeMpa: 13400, hardnessN: 3200, shearMpa: 7.8, shrinkPercent: [4.8, 7.6, 12.4], shrinkTrust: 'solid', source: 'handbook', trust: 'solid'},
  'white fir': {latin: 'Abies concolor', kind: 'softwood', g12: 0.39, morMpa: 68, moeMpa: 10300, hardnessN: 2100, shearMpa: 7.6, shrinkPercent: [3.3, 7, 9.8], shrinkTrust: 'solid', source: 'handbook', trust: 'solid'},
  'western hemlock': {latin: 'Tsuga heterophylla', others: ['hemlock'], kind: 'softwood', g12: 0.45, morMpa: 78, moeMpa: 11300, hardnessN: 2400, shearMpa: 8.6, shrinkPercent: [4.2, 7.8, 12.4], shrinkTrust: 'middling', source: 'handbook', trust: 'solid'},
  'western larch': {latin: 'Larix occidentalis', others: ['larch'], kind: 'softwood', g12: 0.52, morMpa: 90, moeMpa: 12900, hardnessN: 3700, shearMpa: 9.4, shrinkPercent: [4.5, 9.1, 14], shrinkTrust: 'middling', source: 'handbook', trust: 'solid'},
  'eastern white pine': {latin: 'Pinus strobus', kind: 'softwood', g12: 0.35, morMpa: 59, moeMpa: 8500, hardnessN: 1700, shearMpa: 6.2, shrinkPercent: [2.1, 6.1, 8.2], shrinkTrust: 'weak', source: 'handbook', trust: 'solid'},
  'loblolly pine': {latin: 'Pinus taeda', kind: 'softwood', g12: 0.51, morMpa: 88, moeMpa: 12300, hardnessN: 3100, shearMpa: 9.6, shrinkPercent: [4.8, 7.4, 12.3], shrinkTrust: 'middling', source: 'handbook', trust: 'solid'},
  'longleaf pine': {latin: 'Pinus palustris', others: ['heart pine'], kind: 'softwood', g12: 0.59, morMpa: 100, moeMpa: 13700, hardnessN: 3900, shearMpa: 10.4, shrinkPercent: [5.1, 7.5, 12.2], shrinkTrust: 'middling', source: 'handbook', trust: 'solid'},
  'shortleaf pine': {latin: 'Pinus echinata', kind: 'softwood', g12: 0.51, morMpa: 90, moeMpa: 12100, hardnessN: 3100, shearMpa: 9.6, shrinkPercent: [4.6, 7.7, 12.3], shrinkTrust: 'middling', source: 'handbook', trust: 'solid'},
  'slash pine': {latin: 'Pinus elliottii', kind: 'softwood', g12: 0.59, morMpa: 112, moeMpa: 13700, shearMpa: 11.6, shrinkPercent: [5.4, 7.6, 12.1], shrinkTrust: 'middling', source: 'handbook', trust: 'solid'},
  'lodgepole pine': {latin: 'Pinus contorta', kind: 'softwood', g12: 0.41, morMpa: 65, moeMpa: 9200, hardnessN: 2100, shearMpa: 6.1, shrinkPercent: [4.3, 6.7, 11.1], shrinkTrust: 'middling', source: 'handbook', trust: 'solid'},
  'ponderosa pine': {latin: 'Pinus ponderosa', kind: 'softwood', g12: 0.4, morMpa: 65, moeMpa: 8900, hardnessN: 2000, shearMpa: 7.8, shrinkPercent: [3.9, 6.2, 9.7], shrinkTrust: 'weak', source: 'handbook', trust: 'solid'},
  'red pine': {latin: 'Pinus resinosa', others: ['norway pine'], kind: 'softwood', g12: 0.46, morMpa: 76, moeMpa: 11200, hardnessN: 2500, shearMpa: 8.4, source: 'handbook', trust: 'solid'},
  'sugar pine': {latin: 'Pinus lambertiana', kind: 'softwood', g12: 0.36, morMpa: 57, moeMpa: 8200, hardnessN: 1700, shearMpa: 7.8, shrinkPercent: [2.9, 5.6, 7.9], shrinkTrust: 'weak', source: 'handbook', trust: 'solid'},
  'western white pine': {latin: 'Pinus monticola', kind: 'softwood', g12: 0.35, morMpa: 67, moeMpa: 10100, hardnessN: 1900, shearMpa: 7.2, shrinkPercent: [4.1, 7.4, 11.8], shrinkTrust: 'weak', source: 'handbook', trust: 'solid'},
  redwood: {latin: 'Sequoia sempervirens', others: ['old-growth redwood', 'coast redwood'], kind: 'softwood', g12: 0.4, morMpa: 69, moeMpa: 9200, hardnessN: 2100, shearMpa: 6.5, shrinkPercent: [2.6, 4.4, 6.8], shrinkTrust: 'weak', source: 'handbook', trust: 'solid'},
  'engelmann spruce': {latin: 'Picea engelmannii', kind: 'softwood', g12: 0.35, morMpa: 64, moeMpa: 8900, hardnessN: 1750, shearMpa: 8.3, shrinkPercent: [3.8, 7.1, 11], shrinkTrust: 'middling', source: 'handbook', trust: 'solid'},
  'red spruce': {latin: 'Picea rubens', others: ['adirondack spruce'], kind: 'softwood', g12: 0.4, morMpa: 74, moeMpa: 11400, hardnessN: 2200, shearMpa: 8.9, shrinkPercent: [3.8, 7.8, 11.8], shrinkTrust: 'weak', source: 'handbook', trust: 'solid'},
  'sitka spruce': {latin: 'Picea sitchensis', kind: 'softwood', g12: 0.4, morMpa: 70, moeMpa: 10800, hardnessN: 2300, shearMpa: 7.9, shrinkPercent: [4.3, 7.5, 11.5], shrinkTrust: 'weak', source: 'handbook', trust: 'solid'},
  'white spruce': {latin: 'Picea glauca', kind: 'softwood', g12: 0.36, morMpa: 65, moeMpa: 9600, hardnessN: 1800, shearMpa: 6.7, source: 'handbook', trust: 'solid'},
  'true mahogany': {latin: 'Swietenia macrophylla', others: ['honduras mahogany', 'american mahogany', 'genuine mahogany'], kind: 'hardwood', gBasic: 0.45, g12: 0.48, morMpa: 79, moeMpa: 10342, hardnessN: 3560, shrinkPercent: [3, 4.1, 7.8], shrinkTrust: 'solid', source: 'handbook imported', trust: 'middling', trade: 'CITES Appendix II, annotation #6 (neotropical)'},
  'african mahogany': {latin: 'Khaya spp.', others: ['khaya'], kind: 'hardwood', gBasic: 0.42, g12: 0.45, morMpa: 74, moeMpa: 9653, hardnessN: 3690, shrinkPercent: [2.5, 4.5, 8.8], shrinkTrust: 'solid', source: 'handbook imported', trust: 'middling', trade: 'CITES Appendix II, annotation #17 (African populations)'},
  'spanish-cedar': {latin: 'Cedrela spp.', others: ['spanish cedar', 'cedrela'], kind: 'hardwood', gBasic: 0.41, g12: 0.44, morMpa: 79, moeMpa: 9928, hardnessN: 2670, shrinkPercent: [4.2, 6.3, 10.3], shrinkTrust: 'middling', source: 'handbook imported', trust: 'middling', trade: 'CITES Appendix II, annotation #6 (neotropical)'},
  sapele: {latin: 'Entandrophragma cylindricum', others: ['sapele mahogany'], kind: 'hardwood', gBasic: 0.55, g12: 0.6, morMpa: 105, moeMpa: 12548, hardnessN: 6720, shrinkPercent: [4.6, 7.4, 14], shrinkTrust: 'middling', source: 'handbook imported', trust: 'middling'},
  teak: {latin: 'Tectona grandis', kind: 'hardwood', gBasic: 0.55, g12: 0.6, morMpa: 101, moeMpa: 10687, hardnessN: 4450, shrinkPercent: [2.5, 5.8, 7], shrinkTrust: 'middling', source: 'handbook imported', trust: 'middling'},
  purpleheart: {latin: 'Peltogyne spp.', others: ['amaranth'], kind: 'hardwood', gBasic: 0.67, g12: 0.75, morMpa: 132, moeMpa: 15651, hardnessN: 8270, shrinkPercent: [3.2, 6.1, 9.9], shrinkTrust: 'middling', source: 'handbook imported', trust: 'middling'},
  ipe: {latin: 'Handroanthus spp.', others: ['lapacho'], kind: 'hardwood', gBasic: 0.92, g12: 1.08, morMpa: 175, moeMpa: 21650, hardnessN: 16370, shrinkPercent: [6.6, 8, 13.2], shrinkTrust: 'middling', source: 'handbook imported', trust: 'middling', trade: 'CITES Appendix II, annotation #17'},
  'indian rosewood': {latin: 'Dalbergia latifolia', others: ['east indian rosewood'], kind: 'hardwood', gBasic: 0.75, g12: 0.85, morMpa: 117, moeMpa: 12273, hardnessN: 14100, shrinkPercent: [2.7, 5.8, 8.5], shrinkTrust: 'middling', source: 'handbook imported', trust: 'middling', trade: 'CITES Appendix II, annotation #15'},
  'brazilian rosewood': {latin: 'Dalbergia nigra', kind: 'hardwood', gBasic: 0.8, g12: 0.92, morMpa: 131, moeMpa: 12962, hardnessN: 12100, shrinkPercent: [2.9, 4.6, 8.5], shrinkTrust: 'middling', source: 'handbook imported', trust: 'middling', trade: 'CITES Appendix I'},
  iroko: {latin: 'Milicia excelsa', kind: 'hardwood', spread: {densityKgM3: [661, 717], moeMpa: [10066, 12840]}, gBasic: 0.54, g12: 0.59, morMpa: 85, moeMpa: 10066, hardnessN: 5600, shrinkPercent: [2.8, 3.8, 8.8], shrinkTrust: 'middling', source: 'handbook imported', trust: 'middling'},
  limba: {latin: 'Terminalia superba', kind: 'hardwood', gBasic: 0.38, g12: 0.4, morMpa: 61, moeMpa: 6964, hardnessN: 2180, shrinkPercent: [4.5, 6.2, 10.8], shrinkTrust: 'solid', source: 'handbook imported', trust: 'middling'},
  obeche: {latin: 'Triplochiton scleroxylon', others: ['ayous'], kind: 'hardwood', gBasic: 0.3, g12: 0.32, morMpa: 51, moeMpa: 5929, hardnessN: 1910, shrinkPercent: [3, 5.4, 9.2], shrinkTrust: 'solid', source: 'handbook imported', trust: 'middling'},
  okoume: {latin: 'Aucoumea klaineana', others: ['gaboon'], kind: 'hardwood', gBasic: 0.33, g12: 0.35, morMpa: 51, moeMpa: 7860, hardnessN: 1690, shrinkPercent: [4.1, 6.1, 11.3], shrinkTrust: 'solid', source: 'handbook imported', trust: 'middling'},
  jelutong: {latin: 'Dyera costulata', kind: 'hardwood', gBasic: 0.36, g12: 0.38, morMpa: 50, moeMpa: 8136, hardnessN: 1730, shrinkPercent: [2.3, 5.5, 7.8], shrinkTrust: 'middling', source: 'handbook imported', trust: 'middling'},
  balsa: {latin: 'Ochroma pyramidale', kind: 'hardwood', gBasic: 0.16, g12: 0.16, morMpa: 22, moeMpa: 3378, shrinkPercent: [3, 7.6, 10.8], shrinkTrust: 'middling', source: 'handbook imported', trust: 'middling'},
  'dark red meranti': {latin: 'Shorea spp.', others: ['dark red lauan'], kind: 'hardwood', gBasic: 0.46, g12: 0.5, morMpa: 88, moeMpa: 12204, hardnessN: 3470, source: 'handbook imported', trust: 'middling'},
  'light red meranti': {latin: 'Shorea spp.', others: ['light red lauan'], kind: 'hardwood', gBasic: 0.34, g12: 0.36, morMpa: 66, moeMpa: 8481, hardnessN: 2050, source: 'handbook imported', trust: 'middling'},
  'goncalo alves': {latin: 'Astronium spp.', others: ['tigerwood'], kind: 'hardwood', gBasic: 0.84, g12: 0.97, morMpa: 114, moeMpa: 15375, hardnessN: 9610, shrinkPercent: [4, 7.6, 10], shrinkTrust: 'middling', source: 'handbook imported', trust: 'middling'},
  jatoba: {latin: 'Hymenaea courbaril', others: ['courbaril', 'brazilian cherry'], kind: 'hardwood', gBasic: 0.71, g12: 0.8, morMpa: 134, moeMpa: 14893, hardnessN: 10450, shrinkPercent: [4.5, 8.5, 12.7], shrinkTrust: 'middling', source: 'handbook imported', trust: 'middling'},
  ramin: {latin: 'Gonystylus spp.', kind: 'hardwood', gBasic: 0.52, g12: 0.57, morMpa: 128, moeMpa: 14962, hardnessN: 5780, shrinkPercent: [4.3, 8.7, 13.4], shrinkTrust: 'middling', source: 'handbook imported', trust: 'middling'},
  greenheart: {latin: 'Chlorocardium rodiei', kind: 'hardwood', gBasic: 0.8, g12: 0.92, morMpa: 172, moeMpa: 22408, hardnessN: 10450, shrinkPercent: [8.8, 9.6, 17.1], shrinkTrust: 'middling', source: 'handbook imported', trust: 'middling'},
  azobe: {latin: 'Lophira alata', others: ['ekki'], kind: 'hardwood', gBasic: 0.87, g12: 1.01, morMpa: 169, moeMpa: 17030, hardnessN: 14900, shrinkPercent: [8.4, 11, 17], shrinkTrust: 'solid', source: 'handbook imported', trust: 'middling'},
  andiroba: {latin: 'Carapa guianensis', others: ['crabwood'], kind: 'hardwood', gBasic: 0.54, g12: 0.59, morMpa: 107, moeMpa: 13790, hardnessN: 5030, shrinkPercent: [3.1, 7.6, 10.4], shrinkTrust: 'solid', source: 'handbook imported', trust: 'middling'},
  'radiata pine': {latin: 'Pinus radiata', others: ['monterey pine'], kind: 'softwood', gBasic: 0.42, g12: 0.45, morMpa: 81, moeMpa: 10204, hardnessN: 3340, source: 'handbook imported', trust: 'middling'},
  'caribbean pine': {latin: 'Pinus caribaea', kind: 'softwood', gBasic: 0.68, g12: 0.76, morMpa: 115, moeMpa: 15444, hardnessN: 5520, shrinkPercent: [6.3, 7.8, 12.9], shrinkTrust: 'middling', source: 'handbook imported', trust: 'middling'},
  bubinga: {latin: 'Guibourtia spp.', kind: 'hardwood', gBasic: 0.71, g12: 0.8, morMpa: 156, moeMpa: 17099, hardnessN: 11970, shrinkPercent: [5.8, 8.4, 14.2], shrinkTrust: 'weak', source: 'handbook imported', trust: 'weak', trade: 'CITES Appendix II, annotation #15 (three species)'},  'african padauk': {latin: 'Pterocarpus soyauxii', others: ['padauk'], kind: 'hardwood', g12: 0.665, morMpa: 112, moeMpa: 11410, shrinkPercent: [3.3, 5.2, 7.6], shrinkTrust: 'solid', spread: {densityKgM3: [673, 817], moeMpa: [10756, 12066]}, source: 'padauk', trust: 'solid', trade: 'CITES Appendix II, annotation #17 (African populations)'},
  wenge: {latin: 'Millettia laurentii', kind: 'hardwood', g12: 0.87, morMpa: 144, moeMpa: 18700, shrinkPercent: [5.9, 9.1], shrinkTrust: 'weak', spread: {densityKgM3: [880, 1070], moeMpa: [16400, 21050]}, source: 'wenge', trust: 'weak'},
  cocobolo: {latin: 'Dalbergia retusa', kind: 'hardwood', g12: 0.96, moeMpa: 16000, shrinkPercent: [2.7, 4.3], shrinkTrust: 'weak', spread: {densityKgM3: [990, 1200], moeMpa: [14000, 18700]}, source: 'cocobolo', trust: 'weak', trade: 'CITES Appendix II, annotation #15'},
  ebony: {latin: 'Diospyros spp.', others: ['african ebony'], kind: 'hardwood', g12: 0.9, moeMpa: 16500, shrinkPercent: [6.5, 8.5], shrinkTrust: 'weak', spread: {densityKgM3: [900, 1150], moeMpa: [14000, 19000]}, source: 'ebony', trust: 'weak', trade: 'CITES Appendix II, annotation #5 (Madagascar)'},
  'birch plywood': {others: ['baltic birch', 'birch ply', 'finnish birch plywood'], kind: 'sheet', plies: true, g12: 0.607, morMpa: 45.6, moeMpa: 11395, spread: {densityKgM3: [650, 710], moeMpa: [10048, 16471]}, source: 'birch plywood', trust: 'weak'},
  plywood: {others: ['ply'], kind: 'sheet', plies: true, g12: 0.5, morMpa: 34, moeMpa: 8500, spread: {densityKgM3: [450, 710], moeMpa: [5000, 12700]}, source: 'plywood', trust: 'weak'},
  hardboard: {others: ['hard board'], kind: 'sheet', g12: 0.85, morMpa: 31, moeMpa: 4300, spread: {densityKgM3: [900, 1000], moeMpa: [3100, 5520]}, source: 'board', trust: 'weak'},
  mdf: {others: ['medium density fibreboard'], kind: 'sheet', g12: 0.68, morMpa: 35.9, moeMpa: 3590, source: 'board', trust: 'weak'},
} satisfies Record<string, WoodRow>

export type WoodName = keyof typeof woods

/** Names that say less than a species: each is the range over the rows it may mean (common practice, no source). */
export interface LooseWood {
  others?: readonly string[]
  /** The rows it may mean, or all rows of a kind that grow in the USA. */
  of: readonly WoodName[] | 'hardwood' | 'softwood' | 'any'
}

// biome-ignore format: a line each
export const looseWoods = {
  hardwood: {of: 'hardwood'},
  softwood: {of: 'softwood'},
  unknown: {others: ['scrap', 'wood'], of: 'any'},
  maple: {of: ['sugar maple', 'black maple', 'red maple', 'silver maple', 'bigleaf maple']},
  'soft maple': {of: ['red maple', 'silver maple', 'bigleaf maple']},
  oak: {of: ['white oak', 'northern red oak', 'southern red oak', 'black oak']},
  'red oak': {of: ['northern red oak', 'southern red oak', 'black oak']},
  pine: {of: ['eastern white pine', 'western white pine', 'sugar pine', 'ponderosa pine', 'lodgepole pine', 'red pine', 'radiata pine', 'loblolly pine', 'shortleaf pine', 'longleaf pine', 'slash pine']},
  'white pine': {of: ['eastern white pine', 'western white pine']},
  'southern pine': {others: ['yellow pine', 'southern yellow pine'], of: ['loblolly pine', 'shortleaf pine', 'longleaf pine', 'slash pine']},
  poplar: {of: ['yellow-poplar', 'quaking aspen', 'eastern cottonwood']},
  cedar: {of: ['western redcedar', 'eastern redcedar', 'northern white-cedar', 'incense cedar', 'port-orford-cedar', 'yellow-cedar', 'spanish-cedar']},
  ash: {of: ['white ash', 'green ash', 'black ash']},
  birch: {of: ['yellow birch', 'paper birch', 'sweet birch']},
  hickory: {of: ['shagbark hickory', 'shellbark hickory', 'pignut hickory', 'mockernut hickory', 'pecan']},
  spruce: {of: ['sitka spruce', 'white spruce', 'engelmann spruce', 'red spruce']},
  fir: {of: ['douglas-fir', 'white fir']},
  whitewood: {others: ['spf', 'spruce pine fir'], of: ['white spruce', 'engelmann spruce', 'lodgepole pine', 'white fir']},
  mahogany: {of: ['true mahogany', 'african mahogany']},
  'philippine mahogany': {others: ['meranti', 'lauan', 'luan'], of: ['dark red meranti', 'light red meranti']},
  rosewood: {of: ['indian rosewood', 'brazilian rosewood']},
} satisfies Record<string, LooseWood>

export type LooseName = keyof typeof looseWoods
