//! A table of positions that is pasted: read line by line, and taken only as a whole.

use egui::Ui;

use super::super::about::About;
use super::{designators, logged};
use crate::record::{BadLine, Moment, POSITION_COLUMNS, TablePosition, read_positions};
use crate::window::forms::{Pasted, ReadLine};
use crate::window::outbox::Outbox;
use crate::window::theme::Themed;
use crate::window::widgets::{press_if_ui, press_ui, remark, small};
use crate::{counted, text};

/// Draws the field and what its lines say; `true` when they were taken or put away.
pub fn paste_ui(ui: &mut Ui, pasted: &mut Pasted, about: &About<'_>, outbox: &mut Outbox) -> bool {
    let names: Vec<&str> = POSITION_COLUMNS.iter().map(|column| column.names[0]).collect();
    ui.label(remark(ui, text!("The first line names the columns, of these: {columns}", columns = names.join(", "))));
    pasted.field_ui(ui, text!("The table of positions"));
    let known = designators(about);
    let read = read_positions(&pasted.text).map(|lines| {
        let taken = lines.into_iter().map(|line| {
            let line = line?;
            let name = &line.position.designators[0];
            if known.contains(name.as_str()) {
                return Err(BadLine { line: line.line, wrong: text!("{name} is logged already", name = name) });
            }
            Ok(line)
        });
        taken.collect::<Vec<Result<TablePosition, BadLine>>>()
    });
    let good = read.as_ref().map_or(0, |lines| lines.iter().filter(|line| line.is_ok()).count());
    let wrong = read.as_ref().map_or(0, |lines| lines.len() - good);
    let (mut take, mut away) = (false, false);
    ui.horizontal_wrapped(|ui| {
        let word = counted!("Log {count} position", "Log {count} positions", good);
        take = press_if_ui(ui, good > 0 && wrong == 0, &word, "", None).clicked();
        away = press_ui(ui, text!("Put the table away"), "", None).clicked();
        if wrong > 0 {
            let said = counted!(
                "{count} line is wrong: nothing is taken until it is mended or gone",
                "{count} lines are wrong: nothing is taken until they are mended or gone",
                wrong
            );
            ui.label(small(said).color(ui.tokens().power_unknown));
        }
    });
    let lines = match read {
        Ok(lines) => lines,
        Err(error) => {
            if !pasted.text.trim().is_empty() {
                ui.label(small(error.to_string()).color(ui.tokens().power_unknown));
            }
            return away;
        }
    };
    let shown: Vec<ReadLine> = lines
        .iter()
        .map(|line| match line {
            Ok(TablePosition { line, position }) => ReadLine { number: *line, said: Ok(position.said()) },
            Err(BadLine { line, wrong }) => ReadLine { number: *line, said: Err(wrong.clone()) },
        })
        .collect();
    pasted.lines_ui(ui, &shown);
    if take {
        let at = Moment::on(about.view.today);
        let groups = lines.into_iter().flatten();
        let positions: Vec<_> =
            groups.flat_map(|line| line.position.positions(about.file.part.id, at, &mut uuid::Uuid::now_v7)).collect();
        outbox.change(logged(about, &positions));
    }
    take || away
}
