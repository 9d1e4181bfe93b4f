// Colours of the world: ink and paper, matter and living things, and the nine bands of the water scale.

export const INK = {
  ink: '#1E2A32',
  ink2: '#4A5760',
  paper: '#FBF5E6',
  paper2: '#F3E9D0',
  rule: '#C9B68C',
  white: '#FFFDF7',
  cream: '#FFF6E0',
  blue: '#1B5A97',
  blueWash: '#DCE8F2',
  red: '#AE3417',
  redWash: '#F7DDD2',
  amber: '#F2B632',
  good: '#1F6B4A',
  leaf: '#6B9A3C',
  leafLight: '#A3C766',
  leafDark: '#3F6A24',
  leafInk: '#24431A',
  stress: '#CDB84E',
  stressLight: '#E3D57F',
  stressDark: '#9A7B2A',
  stressInk: '#5A4716',
  rootClean: '#FBF0D8',
  rootCleanInk: '#7A6240',
  rootFouled: '#7A5630',
  rootFouledInk: '#3E2A14',
  sludge: '#5C432B',
  sludgeDark: '#3B2A19',
  sludgeLight: '#7D6143',
  fish: '#E58A3A',
  fishBelly: '#F9D9A6',
  fishDark: '#B45D1E',
  fishInk: '#3A2113',
  wall: '#EFE6D2',
  pitWall: '#DDD3BD',
  back: '#F4F4EE',
  block: '#D9CBAD',
  blockDark: '#B6A47E',
  soil: '#D9C198',
  soilDark: '#AD8F5E',
  soilDeep: '#8B6F43',
  wood: '#C79A62',
  woodDark: '#8E6534',
  pipe: '#F4EFE2',
  steel: '#AEB8BC',
  steelDark: '#6D7A80',
  gravel: '#B7AB95',
  mat: '#4F6E73',
  matLight: '#7C9A9C',
  media: '#E9C46A',
  mediaDark: '#8A6A1C',
  biofilm: '#A9772B',
  base: '#F3F0F7',
  pump: '#3F5560',
  airPump: '#C9713A',
  pane: '#8CA7A2',
  frame: '#E9EEE6',
  sun: '#FFD65C',
  sunGlow: '#FFE08A',
  shadow: '#3A2F1A',
  root: '#FBF8D8',
} as const;

/** The one water scale, lightness falling in equal steps. It says how much, never good or bad. */
export const WATER_BANDS = [0xabf6fa, 0x82e0f2, 0x60c9eb, 0x4ab0e1, 0x4395d3, 0x457bbf, 0x4762a6, 0x454b88, 0x3e3769] as const;

/** Band of water that nobody has measured yet. */
export const PALE_BAND = 1;

/** Number of a colour written as #RRGGBB. */
export function rgb(hex: string): number {
  return Number.parseInt(hex.slice(1), 16);
}

/** Mixes two colours written as #RRGGBB; t = 0 gives the first, 1 the second. */
export function mix(a: string, b: string, t: number): string {
  const x = rgb(a);
  const y = rgb(b);
  const part = (shift: number): number => {
    const from = (x >> shift) & 255;
    return Math.round(from + (((y >> shift) & 255) - from) * t);
  };
  return '#' + ((part(16) << 16) | (part(8) << 8) | part(0)).toString(16).padStart(6, '0');
}
