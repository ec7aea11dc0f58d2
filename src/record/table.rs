//! Reads a table that was pasted or came from a file: columns by their headings, cells by kind, faults line by line.

use super::Word;
use crate::text;

/// Why a table cannot be read at all.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum BadTable {
    #[error("{}", text!("There is no line below the headings"))]
    Empty,
    #[error("{}", text!("Line 1: “{column}” is no column; known are {known}", column = .column, known = .known))]
    Column { column: String, known: String },
    #[error("{}", text!("Line 1: two columns are “{column}”", column = .0))]
    Twice(String),
    #[error("{}", text!("Line 1: the column “{column}” is missing", column = .0))]
    Lacks(String),
    #[error("{}", text!("Line {line} cannot be read: a quotation mark is not closed", line = .0))]
    Quote(u64),
}

/// A line that cannot be taken, and why.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BadLine {
    pub line: u64,
    pub wrong: String,
}

/// A column that a table may have.
#[derive(Clone, Copy, Debug)]
pub struct Column<K> {
    pub kind: K,
    /// Its heading, and other words for it; in small letters.
    pub names: &'static [&'static str],
}

/// Lines with their cells, in the order of the columns found.
#[derive(Clone, Debug)]
pub struct Table<K> {
    columns: Vec<K>,
    pub lines: Vec<Line>,
    /// Whether figures have a decimal comma.
    has_commas: bool,
}

#[derive(Clone, Debug)]
pub struct Line {
    /// Counted from 1, the headings included.
    pub number: u64,
    cells: Vec<String>,
}

impl<K: Copy + Eq> Table<K> {
    /// Reads a table whose first line names its columns. Cells are parted by tabs, else semicolons, else commas, as
    /// the headings are; a cell may stand in quotation marks.
    ///
    /// # Errors
    /// What is wrong with the headings; faults of single lines are found when their cells are asked for.
    pub fn read(text: &str, known: &[Column<K>], needed: K) -> Result<Self, BadTable> {
        let headings = text.lines().next().unwrap_or_default();
        let parted_by = ['\t', ';', ','].into_iter().find(|part| headings.contains(*part)).unwrap_or('\t');
        let mut reader = csv::ReaderBuilder::new()
            .delimiter(parted_by as u8)
            .flexible(true)
            .has_headers(false)
            .trim(csv::Trim::All)
            .from_reader(text.trim_start_matches('\u{feff}').as_bytes());
        let mut columns = Vec::new();
        let mut lines = Vec::new();
        for record in reader.records() {
            let record = record.map_err(|error| BadTable::Quote(error.position().map_or(0, csv::Position::line)))?;
            if record.iter().all(str::is_empty) {
                continue;
            }
            if columns.is_empty() {
                columns = record.iter().map(|name| column(name, known)).collect::<Result<_, _>>()?;
                let twice = (1..columns.len()).find(|at| columns[..*at].contains(&columns[*at]));
                if let Some(at) = twice {
                    return Err(BadTable::Twice(record[at].to_owned()));
                }
                continue;
            }
            let number = record.position().map_or(0, csv::Position::line);
            lines.push(Line { number, cells: record.iter().map(str::to_owned).collect() });
        }
        if lines.is_empty() {
            return Err(BadTable::Empty);
        }
        if !columns.contains(&needed) {
            let of = known.iter().find(|column| column.kind == needed);
            return Err(BadTable::Lacks(of.map_or("", |column| column.names[0]).to_owned()));
        }
        let is_comma_figure = |cell: &String| {
            cell.split_once(',').is_some_and(|(whole, part)| {
                let digits = |text: &str| !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit());
                digits(whole.trim_start_matches('-')) && part.starts_with(|c: char| c.is_ascii_digit())
            })
        };
        let has_commas = lines.iter().flat_map(|line| &line.cells).any(is_comma_figure);
        Ok(Self { columns, lines, has_commas })
    }

    /// The cells of a line, to be asked for by column.
    ///
    /// # Errors
    /// The line has more or fewer cells than there are columns.
    pub fn cells<'t>(&'t self, line: &'t Line) -> Result<Cells<'t, K>, String> {
        let (cells, columns) = (line.cells.len(), self.columns.len());
        // Empty cells at the end are often left out, or there are too many of them.
        let over = line.cells.iter().skip(columns).any(|cell| !cell.is_empty());
        if over || (cells < columns && cells < 2 && columns > 2) {
            return Err(text!("{cells} cells for {columns} columns", cells = cells, columns = columns));
        }
        Ok(Cells { table: self, line })
    }
}

fn column<K: Copy>(name: &str, known: &[Column<K>]) -> Result<K, BadTable> {
    // A unit may stand behind the name: "Height (mm)".
    let lower = name.to_lowercase().replace('μ', "µ");
    let bare = lower.split(['(', '[']).next().unwrap_or_default().trim();
    let found = known.iter().find(|column| column.names.contains(&bare) || column.names.contains(&lower.as_str()));
    found.map(|column| column.kind).ok_or_else(|| BadTable::Column {
        column: name.to_owned(),
        known: known.iter().map(|column| column.names[0]).collect::<Vec<_>>().join(", "),
    })
}

/// The cells of one line.
#[derive(Clone, Copy)]
pub struct Cells<'t, K> {
    table: &'t Table<K>,
    line: &'t Line,
}

impl<'t, K: Copy + Eq> Cells<'t, K> {
    /// Whether the table has this column at all.
    pub fn has(&self, column: K) -> bool {
        self.table.columns.contains(&column)
    }

    /// What stands in a column; empty where the table has none.
    pub fn text(&self, column: K) -> &'t str {
        let at = self.table.columns.iter().position(|known| *known == column);
        at.and_then(|at| self.line.cells.get(at)).map_or("", String::as_str)
    }

    /// A figure in a unit; `None` for an empty cell. The unit may stand behind it.
    ///
    /// # Errors
    /// Says what is no figure, can be read in two ways, or lies outside the bounds.
    pub fn figure(&self, column: K, what: &str, unit: &str, least: f64, most: f64) -> Result<Option<f64>, String> {
        let printed = self.text(column);
        if printed.is_empty() {
            return Ok(None);
        }
        let refuse = || text!("{what}: “{cell}” is no figure", what = what, cell = printed);
        let bare = printed.strip_suffix(unit).unwrap_or(printed).trim();
        let three_behind = |sign: char| {
            let parts = bare.split_once(sign);
            parts.is_some_and(|(whole, part)| part.len() == 3 && !whole.trim_start_matches(['-', '0']).is_empty())
        };
        let both = bare.contains(',') && bare.contains('.');
        if both || three_behind(',') || (self.table.has_commas && three_behind('.')) {
            return Err(text!(
                "{what}: “{cell}” can be read in two ways; write it without a sign for thousands",
                what = what,
                cell = printed
            ));
        }
        let figure =
            bare.replace(',', ".").parse::<f64>().ok().filter(|figure| figure.is_finite()).ok_or_else(refuse)?;
        if (least..=most).contains(&figure) {
            return Ok(Some(figure));
        }
        Err(text!(
            "{what}: {figure} {unit} cannot be: it lies between {least} and {most}",
            what = what,
            figure = figure,
            unit = unit,
            least = least,
            most = most
        ))
    }

    /// A word of a closed list, by its stored name, its label or another word for it; `None` for an empty cell.
    ///
    /// # Errors
    /// Says which words there are.
    pub fn word<W: Word>(&self, column: K, what: &str, other: fn(&str) -> Option<W>) -> Result<Option<W>, String> {
        let printed = self.text(column);
        if printed.is_empty() {
            return Ok(None);
        }
        let lower = printed.to_lowercase();
        let is_it = |word: &W| word.name() == lower.replace([' ', '-'], "_") || word.label().to_lowercase() == lower;
        let known = W::ALL.iter().copied().find(is_it).or_else(|| other(&lower));
        known.map(Some).ok_or_else(|| {
            let all: Vec<&str> = W::ALL.iter().map(|word| word.label()).collect();
            text!("{what}: “{cell}” is none of {all}", what = what, cell = printed, all = all.join(", "))
        })
    }

    /// Yes or no; `None` for an empty cell.
    ///
    /// # Errors
    /// Says how to write it.
    pub fn yes(&self, column: K, what: &str) -> Result<Option<bool>, String> {
        match self.text(column).to_lowercase().as_str() {
            "" => Ok(None),
            "yes" | "y" | "1" | "true" | "low" => Ok(Some(true)),
            "no" | "n" | "0" | "false" => Ok(Some(false)),
            other => Err(text!("{what}: “{cell}” is neither yes nor no", what = what, cell = other)),
        }
    }
}
