//! What every desk is built from: tables, fields, answers, badges, strips and bars, each named for a screen reader.

mod answer_row;
mod badge;
mod cells;
mod edit;
mod field;
mod gate_strip;
mod picker;
mod press;
mod span_bar;
mod table;
mod words;

pub use answer_row::{AnswerChoice, answer_row_ui};
pub use badge::{PowerWord, badge_ui, caution_ui, hold_ui, mark_ui, power_badge_ui, power_ui, severity_ui};
pub use cells::Cells;
pub use edit::{Edit, Fact, pressable_ui, row_ui};
pub use field::{choice_ui, expanded, field_ui, notes_ui, path_field_ui, short_field_ui};
pub use gate_strip::{GateMark, GateStand, gate_strip_ui};
pub use picker::{Asking, Pick, Picker};
pub use press::{link_ui, mark_button, press_if_ui, press_ui, target_ui, tool_ui};
pub use span_bar::{SpanBar, years_text};
pub use table::{Column, Rows, Sort, Table, TableAct, TableState, Width};
pub use words::{body, first_ui, marking, remark, section_ui, small, strong, title_ui};
