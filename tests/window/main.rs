//! The window, driven through its accessible tree.
#![allow(clippy::unwrap_used)]

mod bench;
mod capacitors;
mod commands;
mod copy_out;
mod desktop;
mod evenings;
#[allow(dead_code)]
#[path = "../console/photos/exif.rs"]
mod exif;
mod facts;
mod finder;
mod full_disk;
mod hand;
mod how_it_fits;
mod intake;
mod machines;
mod marking;
mod part_sheet;
mod placement;
mod placement_seen;
mod placement_tried;
mod proving;
#[allow(dead_code)]
#[path = "../console/photos/quarters.rs"]
mod quarters;
mod reach;
mod recap;
#[path = "../support/records.rs"]
mod records;
mod rounds;
mod shelf;
mod shell;
mod sorting;
mod supplies;
mod taking_in;
mod theme;
mod touched;
mod verdicts;
mod viewer;
mod watched;
mod work_path;
