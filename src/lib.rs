//! Benchwright: a logbook for people who restore period personal computers.
//!
//! The map of the house. A floor uses only the floors above it in this list; `window` and `console` may use all.

/// Every text a person reads goes through here, so that a second language needs no other code.
pub mod text;

/// What the trade knows: date codes, capacitors, clocks, rails, drives, corrosion, colour. Pure functions.
pub mod trade;

/// What the logbook holds: plain types, one file an entity, and [`record::Logbook`], all of them together.
pub mod record;

/// The trade's tables (questions, findings, work, proofs, connectors) as typed, checked data.
pub mod rules;

/// What follows from records and rules: findings, outstanding work, readiness, fit. Pure.
pub mod assess;

/// Where it is kept: SQLite, photograph files, changes, history and undo, exchange documents.
pub mod store;

/// Decoding, thumbnails, measuring on and drawing of pictures.
pub mod photo;

/// What leaves for people: photographs with their marks.
pub mod paper;

/// Commands answered without a window.
pub mod console;

/// The window: app shell, commands, theme, widgets, one folder a desk.
pub mod window;
