/** The kinds of notice: each has a sign, a word and a colour. */
export const NOTICES = ["note", "caution", "doubt", "wrong", "good"] as const;
export type NoticeKind = (typeof NOTICES)[number];
