export type Saved = { place: string | null, can_open: boolean, };
