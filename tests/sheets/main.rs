//! Files: none can hurt, and people's odd workbooks are read right.
//!
//! What may hurt is checked in a process of its own, with its time and memory measured.

#![cfg(feature = "sheets")]

mod child;
mod csvs;
mod damaged;
mod dates;
mod grids;
mod headings;
mod make;
mod markings;
mod packages;
mod parts;
mod repeats;
mod same;
mod sheets;
mod values;
