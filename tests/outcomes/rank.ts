/** Gauss with fractions of whole numbers: a way of its own to find what sums give away. */
interface Fraction {
  readonly top: bigint;
  readonly bottom: bigint;
}

const ZERO: Fraction = { top: 0n, bottom: 1n };
const over = (a: Fraction, b: Fraction): Fraction => lowest(a.top * b.bottom, a.bottom * b.top);
function lessProduct(from: Fraction, a: Fraction, b: Fraction): Fraction {
  const [top, bottom] = [a.top * b.top, a.bottom * b.bottom];
  return lowest(from.top * bottom - top * from.bottom, from.bottom * bottom);
}

function lowest(top: bigint, bottom: bigint): Fraction {
  let [a, b] = [top < 0n ? -top : top, bottom < 0n ? -bottom : bottom];
  while (b !== 0n) [a, b] = [b, a % b];
  return a === 0n || top === 0n ? ZERO : { top: top / a, bottom: bottom / a };
}

export function rankOf(rows: readonly (readonly number[])[]): number {
  const left = rows.map((row) => row.map((value) => ({ top: BigInt(value), bottom: 1n })));
  let rank = 0;
  for (let column = 0; column < (rows[0]?.length ?? 0); column += 1) {
    const at = left.findIndex((row, i) => i >= rank && row[column]?.top !== 0n);
    if (at === -1) continue;
    const lead = left[at] ?? [];
    left[at] = left[rank] ?? [];
    left[rank] = lead;
    for (let i = rank + 1; i < left.length; i += 1) {
      const row = left[i] ?? [];
      const head = row[column];
      const pivot = lead[column];
      if (head === undefined || pivot === undefined || head.top === 0n) continue;
      const factor = over(head, pivot);
      left[i] = row.map((value, j) => lessProduct(value, factor, lead[j] ?? ZERO));
    }
    rank += 1;
  }
  return rank;
}
