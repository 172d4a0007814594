/** Numbers as they are written in the language in use. */
import { language } from "../../text";

export function amount(value: number, digits = 0): string {
  return new Intl.NumberFormat(language(), { maximumFractionDigits: digits }).format(value);
}

/** A share in per cent. */
export function share(value: number): string {
  // As the engine writes it, in every language.
  return `${amount(100 * value, 1)} %`;
}
