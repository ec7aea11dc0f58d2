//! Capacitors: what their marks say, what they may measure, how long they last, how they are woken up again.

pub mod preferred;
