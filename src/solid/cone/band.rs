//! Symmetric matrices with few entries beside the diagonal, and their factors L D Lᵀ.

/// A symmetric matrix: of each column what is below the diagonal, down to the last row that it
/// or a column before it reaches.
pub(super) struct Banded {
    /// Last row of each column; it never falls from one column to the next.
    last: Vec<usize>,
    /// Where each column starts in `entries`.
    start: Vec<usize>,
    entries: Vec<f64>,
}

impl Banded {
    /// All zeros, from the last row that each column is coupled with.
    pub fn zeros(coupled: Vec<usize>) -> Self {
        let mut last = coupled;
        let mut furthest = 0;
        for (column, row) in last.iter_mut().enumerate() {
            furthest = furthest.max(*row).max(column);
            *row = furthest;
        }
        let mut total = 0;
        let starts = last.iter().enumerate().map(|(column, row)| {
            let start = total;
            total += row + 1 - column;
            start
        });
        let start = starts.collect();
        Self { last, start, entries: vec![0.0; total] }
    }

    pub fn size(&self) -> usize {
        self.last.len()
    }

    /// Adds to the entry of a row and a column; above the diagonal it is there already.
    pub fn add(&mut self, row: usize, column: usize, value: f64) {
        if row >= column {
            self.entries[self.start[column] + row - column] += value;
        }
    }

    pub fn diagonal(&self, at: usize) -> f64 {
        self.entries[self.start[at]]
    }

    /// Entries of a column from a row on down.
    fn below(&self, column: usize, row: usize) -> &[f64] {
        &self.entries
            [self.start[column] + row - column..=self.start[column] + self.last[column] - column]
    }

    /// The matrix as `L D Lᵀ`, with `L` a lower triangle of ones on its diagonal.
    ///
    /// Without exchanges of rows: the stiffness of a held body is positive definite.
    pub fn factored(mut self) -> Factors {
        let size = self.size();
        let mut first = 0;
        let mut column = Vec::new();
        for k in 0..size {
            while self.last[first] < k {
                first += 1;
            }
            column.clear();
            column.extend_from_slice(self.below(k, k));
            let mut j = first;
            // Four columns at a time, so that the one they are taken from is read once for all four.
            while j + 4 <= k {
                let of: [&[f64]; 4] = std::array::from_fn(|at| self.below(j + at, k));
                let by: [f64; 4] = std::array::from_fn(|at| of[at][0] * self.diagonal(j + at));
                take_four(&mut column, of, by);
                j += 4;
            }
            for j in j..k {
                let of = self.below(j, k);
                take(&mut column, of, of[0] * self.diagonal(j));
            }
            let d = column[0];
            let start = self.start[k];
            self.entries[start] = d;
            for (entry, value) in self.entries[start + 1..].iter_mut().zip(&column[1..]) {
                *entry = value / d;
            }
        }
        Factors(self)
    }
}

/// `to -= by · of`, as far as `of` reaches.
#[inline(always)]
fn take(to: &mut [f64], of: &[f64], by: f64) {
    for (to, of) in to.iter_mut().zip(of) {
        *to -= by * of;
    }
}

/// The same with four at a time, of which none is shorter than the one before.
#[inline(always)]
fn take_four(to: &mut [f64], of: [&[f64]; 4], by: [f64; 4]) {
    let common = of[0].len().min(to.len());
    let [a, b, c, d] = of.map(|of| &of[..common]);
    let (head, _) = to.split_at_mut(common);
    for (i, to) in head.iter_mut().enumerate() {
        *to -= by[0] * a[i] + by[1] * b[i] + (by[2] * c[i] + by[3] * d[i]);
    }
    for at in 1..4 {
        take(&mut to[common..], &of[at][common..], by[at]);
    }
}

/// `L D Lᵀ`: the columns of `L` with `D` on their diagonal.
pub(super) struct Factors(Banded);

impl Factors {
    /// `Fᵀ A⁻¹ F`, row by row, of loads `F` that are given row by row.
    ///
    /// `reach[row]` says how many loads, counted from the first, have an entry in this row or one
    /// before; it never falls. Only `L⁻¹ F` is needed for that, which is zero before a load's first entry.
    pub fn gram(&self, loads: &mut [f64], count: usize, reach: &[usize]) -> Vec<f64> {
        let matrix = &self.0;
        let mut first = 0;
        for i in 0..matrix.size() {
            while matrix.last[first] < i {
                first += 1;
            }
            if reach[i] == 0 {
                continue;
            }
            let (done, rest) = loads.split_at_mut(i * count);
            let row = &mut rest[..reach[i]];
            let of = |j: usize| &done[j * count..j * count + reach[j]];
            let by = |j: usize| matrix.entries[matrix.start[j] + i - j];
            let mut j = first;
            while j + 4 <= i {
                take_four(
                    row,
                    std::array::from_fn(|at| of(j + at)),
                    std::array::from_fn(|at| by(j + at)),
                );
                j += 4;
            }
            for j in j..i {
                take(row, of(j), by(j));
            }
        }
        let mut gram = vec![0.0; count * count];
        let row = |i: usize| &loads[i * count..(i + 1) * count];
        let scaled = |i: usize, r: usize| -row(i)[r] / matrix.diagonal(i);
        let size = matrix.size();
        let mut i = 0;
        while i < size {
            let rows = if i + 4 <= size { 4 } else { 1 };
            let reach = reach[i + rows - 1];
            for r in 0..reach {
                let to = &mut gram[r * count + r..r * count + reach];
                if rows == 4 {
                    let of = std::array::from_fn(|at| &row(i + at)[r..reach]);
                    take_four(to, of, std::array::from_fn(|at| scaled(i + at, r)));
                } else {
                    take(to, &row(i)[r..reach], scaled(i, r));
                }
            }
            i += rows;
        }
        for r in 0..count {
            for c in 0..r {
                gram[r * count + c] = gram[c * count + r];
            }
        }
        gram
    }
}
