/**
 * Words for showing, in which no number stands apart from its unit and no date is broken,
 * and long words that a slash joins may part at it.
 */

const UNIT = /(\d) (?=[%°]|[\p{L}°%][\p{L}°%/²³·]{0,4}(?!\p{L}))/gu;
const SIGN = /([±<>≤≥]) (?=[\d−])/g;
const SPAN = / (?=… [\d−])/g;
const DAY = /(\d{4})-(\d{2})-(\d{2})/g;

const JOINED = /(\p{L}{4}\/)(?=\p{L}{4})/gu;

const NO_BREAK = "\u00a0";
/** Nothing to see, and no line ends at it. */
const JOINER = "\u2060";
const MAY_PART = "\u200b";

export function whole(words: string): string {
  return words
    .replace(UNIT, `$1${NO_BREAK}`)
    .replace(SIGN, `$1${NO_BREAK}`)
    .replace(SPAN, NO_BREAK)
    .replace(DAY, `$1-${JOINER}$2-${JOINER}$3`)
    .replace(JOINED, `$1${MAY_PART}`);
}
