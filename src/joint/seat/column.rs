//! Many forces and mismatches on one seat.

use std::num::NonZero;
use std::thread;

use super::{Pushed, SeatFound};
use crate::error::{Error, ErrorKind};
use crate::units::{Angle, Force};

/// Rows below which a thread costs more than it saves.
const ROWS_A_THREAD: usize = 2048;

impl SeatFound {
    /// [`push`](Self::push) of every row of two columns, on as many threads as the machine has.
    ///
    /// # Errors
    ///
    /// [`UnlikeLengths`](ErrorKind::UnlikeLengths) for columns that differ in length. A row that `push` would
    /// refuse holds its error.
    pub fn push_column(
        &self,
        forces: &[Force],
        mismatches: &[Angle],
    ) -> Result<Vec<Result<Pushed, Error>>, Error> {
        if forces.len() != mismatches.len() {
            return Err(ErrorKind::UnlikeLengths {
                argument: "mismatch".into(),
                given: mismatches.len(),
                wanted: forces.len(),
            }
            .into());
        }
        let some = |forces: &[Force], mismatches: &[Angle]| {
            let rows = forces.iter().zip(mismatches);
            rows.map(|(force, mismatch)| self.push(*force, *mismatch)).collect::<Vec<_>>()
        };
        let cores = thread::available_parallelism().map_or(1, NonZero::get);
        let rows = forces.len().div_ceil(cores).max(ROWS_A_THREAD);
        if rows >= forces.len() {
            return Ok(some(forces, mismatches));
        }
        let parts = forces.chunks(rows).zip(mismatches.chunks(rows));
        let found = thread::scope(|scope| {
            let running: Vec<_> = parts
                .map(|(forces, mismatches)| {
                    (forces, mismatches, scope.spawn(|| some(forces, mismatches)))
                })
                .collect();
            let mut all = Vec::with_capacity(forces.len());
            for (forces, mismatches, thread) in running {
                // A thread that could not be finished is done over here.
                all.extend(thread.join().unwrap_or_else(|_| some(forces, mismatches)));
            }
            all
        });
        Ok(found)
    }
}
