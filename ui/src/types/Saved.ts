export type Saved = { path: string | null };
