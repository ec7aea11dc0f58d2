//! What the logbook holds.
