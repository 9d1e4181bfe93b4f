// Kinds of stage that plants grow in.

export const BEDS: ReadonlySet<string> = new Set(['raftBed', 'nftChannel', 'mediaBed', 'tower']);
