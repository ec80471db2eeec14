/** Of more there are only so many: a table may be larger than the memory. */
const mostRanges = 20;

/** Rows of a table in rising order, said as ranges. */
export class RowList {
  readonly #ranges: { readonly from: number; to: number }[] = [];
  #more = 0;
  add(row: number): void {
    const last = this.#ranges.at(-1);
    if (this.#more === 0 && last?.to === row - 1) last.to = row;
    else if (this.#ranges.length < mostRanges) this.#ranges.push({ from: row, to: row });
    else this.#more += 1;
  }
  /** `row 3`, or `rows 3, 7-9 and 41 more`; empty where there is none. */
  said(): string {
    const [first] = this.#ranges;
    if (first === undefined) return '';
    const ranges = this.#ranges.map(({ from, to }) => (from === to ? `${from}` : `${from}-${to}`)).join(', ');
    return `${this.#ranges.length === 1 && first.from === first.to ? 'row' : 'rows'} ${ranges}${this.#more > 0 ? ` and ${this.#more} more` : ''}`;
  }
}
