//! Work in an order by hand: no piece comes, over however many steps, after itself.

use std::collections::HashSet;

use rusqlite::{Connection, OptionalExtension as _};
use uuid::Uuid;

use super::consistency::key_in;
use super::error::StoreError;
use super::history::Image;
use super::refusal::Refusal;

/// Checks an order that was written; the others are all in the database by now.
///
/// # Errors
/// Names the pieces of the circle.
pub fn check(connection: &Connection, image: &Image) -> Result<(), StoreError> {
    let Some((later, first)) = key_in(image, "work").zip(key_in(image, "after")) else { return Ok(()) };
    let mut seen = HashSet::new();
    // Each with the way by which it was reached.
    let mut open = vec![vec![later, first]];
    while let Some(way) = open.pop() {
        let Some(last) = way.last().copied() else { continue };
        if last == later {
            let named: Vec<String> = way.iter().rev().map(|work| name(connection, *work)).collect::<Result<_, _>>()?;
            return Err(Refusal::WorkCircle { work: named.join(" → ") }.into());
        }
        if !seen.insert(last) {
            continue;
        }
        let mut statement = connection.prepare_cached("SELECT \"after\" FROM work_after WHERE work = ?")?;
        let firsts = statement.query_map([last.as_bytes()], |row| row.get::<_, [u8; 16]>(0))?;
        for bytes in firsts {
            open.push(way.iter().copied().chain([Uuid::from_bytes(bytes?)]).collect());
        }
    }
    Ok(())
}

/// A piece of work by its title or the name of its rule, with its part's tag.
fn name(connection: &Connection, work: Uuid) -> Result<String, StoreError> {
    let sql = "SELECT CASE work.title WHEN '' THEN work.rule ELSE work.title END || ' (' || part.tag || ')'
               FROM work JOIN part ON part.id = work.part WHERE work.id = ?";
    let name: Option<String> =
        connection.prepare_cached(sql)?.query_row([work.as_bytes()], |row| row.get(0)).optional()?;
    Ok(name.unwrap_or_else(|| work.to_string()))
}
