//! Photographs: what is read of them, small copies, taking in, grouping, handing out, and their commands.

mod exif;
mod fuzz;
mod groups;
mod handed_out;
mod quarters;
mod reading;
mod shots;
mod small;
mod taking_in;
