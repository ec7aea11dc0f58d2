//! What happens to a logbook's files when things go wrong around them.

mod damage;
mod full_disk;
mod held;
mod kills;
mod write_protected;
