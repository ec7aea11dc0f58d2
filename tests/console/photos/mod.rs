//! Photographs: what is read of them, small copies, taking in, grouping, measuring, handing out, and their commands.

mod exif;
mod fuzz;
mod groups;
mod handed_out;
mod marked;
mod patches;
mod quarters;
mod reading;
mod shots;
mod small;
mod taking_in;
